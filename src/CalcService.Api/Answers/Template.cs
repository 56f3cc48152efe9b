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
