using System.Collections.Concurrent;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using CalcService.Api.Tests.Fixtures;
using CalcService.Engine.Findings;
using CalcService.Engine.Verifications;
using CsCheck;

namespace CalcService.Api.Tests.Capabilities.Verifications;

/// <summary>
/// An answer as it was given matches; one that was touched anywhere never gets a plain go. What is expected of a place is what the table
/// in docs/record-verifications.md says of it.
/// </summary>
public sealed partial class ForgedAnswerTests(KeptAnswers kept) : IClassFixture<KeptAnswers>
{
    /// <summary>Random forgeries of random answers.</summary>
    private const int Random = 4_000;

    [Fact]
    public void Answer_as_it_was_given_matches_without_a_finding() => Assert.All(kept.OfExamples.Concat(kept.OfFindings), one =>
    {
        var verified = one.Verify(one.Answer);
        Assert.True(verified.Decision == Decision.Proceed && verified.Findings.Count == 0,
            $"{one.Calculation.Operation}: {verified.Result}");
        Assert.Empty(verified.Result.Unchecked);
    });

    /// <summary>The first place of each kind in each path's answers, with every trick that can be played there.</summary>
    [Fact]
    public void Every_member_of_every_path_tells_of_a_forgery()
    {
        var met = new HashSet<string>(StringComparer.Ordinal);
        foreach (var one in kept.OfExamples)
        {
            var kind = $"{one.Calculation.Operation} {(one.Answer["input"] is null ? "plain" : "full")} ";
            foreach (var (pointer, _) in one.Answer.Walk().Where(node => met.Add(kind + Index().Replace(node.Pointer, "/*"))))
            {
                foreach (var trick in Enum.GetValues<Trick>())
                {
                    Tells(one, pointer, trick);
                }
            }
        }

        Assert.True(met.Count > 1000, $"{met.Count} kinds of places");
    }

    [Fact]
    public void Random_forgery_of_a_random_answer_is_told()
    {
        KeptAnswer[] all = [.. kept.OfExamples, .. kept.OfFindings];
        var played = new ConcurrentDictionary<Trick, int>();
        Gen.Select(Gen.Int[0, all.Length - 1], Gen.Int[0, int.MaxValue], Gen.Enum<Trick>()).Sample(
            (which, place, trick) =>
            {
                var places = all[which].Answer.Walk().Where(node => Forgery.CanBe(node.Value, trick)).ToArray();
                if (Tells(all[which], places[place % places.Length].Pointer, trick))
                {
                    played.AddOrUpdate(trick, 1, (_, count) => count + 1);
                }
            },
            iter: Random);
        Assert.All(Enum.GetValues<Trick>(), trick => Assert.InRange(played.GetValueOrDefault(trick), Random / 20, Random));
    }

    /// <summary>Words of each stop and each missing fact, whatever language and contract the answer claims.</summary>
    [Fact]
    public void Words_of_a_stop_or_missing_fact_are_those_computed_to_the_letter()
    {
        var met = new HashSet<string>(StringComparer.Ordinal);
        var played = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var one in kept.OfFindings)
        {
            var places = one.Answer.Walk().Where(node => Halting(one.Answer, node.Pointer) is { } kind && met.Add(kind));
            foreach (var (pointer, text) in places.ToArray())
            {
                foreach (var (how, forged) in ForgedWords.Of(one.Answer, pointer, (string)text!))
                {
                    Assert.All(ForgedWords.Claims(forged), claimed =>
                    {
                        var result = one.Verify(claimed).Result;
                        Assert.True((result.Outcome, result.Pointer) == (VerificationOutcome.Differs, "/answer" + pointer),
                            $"{how} {claimed["provenance"]} {pointer}: {result}");
                    });
                    played[how] = played.GetValueOrDefault(how) + 1;
                }
            }
        }

        Assert.Equal(["digit", "invented", "measures", "more", "null", "removed", "words"], played.Keys.Order(StringComparer.Ordinal));
        Assert.All(played, how => Assert.True(how.Value > 20, $"{how}"));
    }

    /// <summary>Plays a trick and holds what is said of it against the table; false where it can't be played there.</summary>
    private static bool Tells(KeptAnswer one, string pointer, Trick trick)
    {
        if (Forgery.Of(one.Answer, pointer, trick) is not { } forged || IsNoForgery(one.Answer, forged))
        {
            return false;
        }

        var verified = one.Verify(forged.Answer);
        var expected = Expected(one.Answer, forged);
        var result = verified.Result;
        var told = $"{trick} {one.Calculation.Operation} {pointer}: {verified.Decision} at {result.Pointer}, expected {expected}";
        Assert.True(verified.Decision == expected, told);
        Assert.True(expected != Decision.DoNotProceed || IsAt(result.Pointer!, "/answer" + pointer, trick), told);
        Assert.True(trick != Trick.AddMember || expected == Decision.DoNotProceed || result.Unchecked.SequenceEqual([forged.Added]), told);
        return true;
    }

    /// <summary>
    /// A changed value is named itself. The canonical request is named whole; to be without it is to be without its detail.
    /// </summary>
    private static bool IsAt(string told, string forged, Trick trick) =>
        told == forged
        || forged == "/answer/input"
        || (told == "/answer/input" && forged.StartsWith(told, StringComparison.Ordinal))
        || (trick != Trick.Change
        && (told.StartsWith(forged, StringComparison.Ordinal) || forged.StartsWith(told, StringComparison.Ordinal)));

    /// <summary>A time of computing may be any, and an answer without its detail is the plain answer.</summary>
    private static bool IsNoForgery(JsonObject answer, Forgery forged) =>
        (forged.Pointer == "/provenance/computedAt" && forged.Trick == Trick.Change)
        || (forged.Pointer == "/input" && forged.Trick == Trick.MakeNull && answer["trace"]!.AsArray().Count == 0);

    private static Decision Expected(JsonObject answer, Forgery forged)
    {
        var (pointer, trick) = (forged.Pointer, forged.Trick);
        if (pointer is "/provenance/engine" or "/provenance/rules" || (pointer == "/provenance" && trick != Trick.AddMember)
            || (pointer == "/result" && trick == Trick.MakeNull))
        {
            return Decision.Undetermined;
        }

        if (trick == Trick.AddMember)
        {
            return pointer.StartsWith("/input", StringComparison.Ordinal) ? Decision.DoNotProceed : Decision.ProceedWithCare;
        }

        return (Beside().IsMatch(pointer) && Halting(answer, pointer) is null) || (pointer is "/trace" or "/input" && trick == Trick.Remove)
            ? Decision.ProceedWithCare : Decision.DoNotProceed;
    }

    /// <summary>Code, severity and member of words of a stop or a missing fact; null at any other place.</summary>
    private static string? Halting(JsonObject answer, string pointer) =>
        Worded().Match(pointer) is { Success: true } words && answer.At($"/findings/{words.Groups["index"]}") is { } finding
        && (string?)finding["severity"] is "stop" or "unknown"
            ? $"{finding["code"]} {finding["severity"]} {words.Groups["member"]}" : null;

    [GeneratedRegex("/[0-9]+(?=/|$)")]
    private static partial Regex Index();

    [GeneratedRegex("^/findings/(?<index>[0-9]+)/(?<member>message|action)$")]
    private static partial Regex Worded();

    /// <summary>Rows "beside" and "words" of the table.</summary>
    [GeneratedRegex("^/findings/[0-9]+/(message|action|related|actor|source)(/|$)|^/safetyNotes(/|$)|^/assumptions/[0-9]+/(text|origin)$"
        + "|^/trace/[0-9]+/(name|substituted|source)(/|$)|^/provenance/(contract|language|computedAt)$"
        + "|^/result/(.*/)?(text|by|label)$|^/result/work/[0-9]+/task$|^/result/(.*/)?source(/|$)")]
    private static partial Regex Beside();
}
