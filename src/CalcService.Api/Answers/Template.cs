using System.Collections.Concurrent;

namespace CalcService.Api.Answers;

/// <summary>Words with places for others, such as "{measured} is above {limit}", taken apart once.</summary>
internal sealed class Template
{
    /// <summary>By reference: the templates are those of the engine's definitions, and there is a fixed number of them.</summary>
    private static readonly ConcurrentDictionary<string, Template> Known = new(ReferenceEqualityComparer.Instance);

    private readonly string[] _texts;
    private readonly string[] _names;

    private Template(string template)
    {
        var (texts, names) = (new List<string>(), new List<string>());
        var done = 0;
        for (var open = template.IndexOf('{', StringComparison.Ordinal); open >= 0; open = template.IndexOf('{', done))
        {
            var close = template.IndexOf('}', open);
            texts.Add(template[done..open]);
            names.Add(template[(open + 1)..close]);
            done = close + 1;
        }

        texts.Add(template[done..]);
        (_texts, _names) = ([.. texts], [.. names]);
    }

    public static Template Of(string template) => Known.GetOrAdd(template, static template => new(template));

    /// <summary>Whether a text can have come of it: what stands between the places is there, in order.</summary>
    public bool Matches(string text)
    {
        var (first, last) = (_texts[0], _texts[^1]);
        if (_names.Length == 0)
        {
            return text == first;
        }

        if (text.Length < first.Length + last.Length || !text.StartsWith(first, StringComparison.Ordinal) || !text.EndsWith(last, StringComparison.Ordinal))
        {
            return false;
        }

        var rest = text.AsSpan(first.Length, text.Length - first.Length - last.Length);
        foreach (var between in _texts[1..^1])
        {
            var at = rest.IndexOf(between, StringComparison.Ordinal);
            if (at < 0)
            {
                return false;
            }

            rest = rest[(at + between.Length)..];
        }

        return true;
    }

    /// <summary>Puts words in their places in one pass: what a client sent is never a template.</summary>
    /// <param name="from">What the words are taken from.</param>
    /// <param name="word">Gives a word by its name.</param>
    public string Fill<T>(T from, Func<T, string, string> word)
    {
        if (_names.Length == 0)
        {
            return _texts[0];
        }

        var parts = new string[_texts.Length + _names.Length];
        for (var i = 0; i < _names.Length; i++)
        {
            (parts[2 * i], parts[(2 * i) + 1]) = (_texts[i], word(from, _names[i]));
        }

        parts[^1] = _texts[^1];
        return string.Concat(parts);
    }
}
