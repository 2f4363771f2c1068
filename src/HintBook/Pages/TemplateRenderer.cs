using System.Collections.Concurrent;
using HintBook.Text;
using Scriban;
using Scriban.Parsing;
using Scriban.Runtime;
using Scriban.Syntax;

namespace HintBook.Pages;

/// <summary>
/// Prints pages from a theme's templates, on as many threads as ask for it. Each thread borrows a context that has been used
/// before: making one costs more than a page.
/// </summary>
internal sealed class TemplateRenderer(Theme theme)
{
    private readonly ConcurrentBag<HtmlContext> idle = [];

    /// <summary>Renders one page.</summary>
    /// <param name="template">One of <see cref="Theme.Pages"/>.</param>
    /// <param name="view">The names that the template can use.</param>
    /// <exception cref="TemplateFailure">The template doesn't work with this view.</exception>
    public ReadOnlyMemory<byte> Print(string template, ScriptObject view) => Print(template, view, takesPiecesOut: false).Html;

    /// <summary>Renders one page with the pieces that are sealed taken out of it.</summary>
    public PageInPieces PrintInPieces(string template, ScriptObject view) => Print(template, view, takesPiecesOut: true);

    private PageInPieces Print(string template, ScriptObject view, bool takesPiecesOut)
    {
        var context = idle.TryTake(out var used) ? used : new HtmlContext(theme);
        var page = context.Print(template, view, takesPiecesOut);
        // Only a context whose rendering ended well goes back: a failure leaves its stacks half full.
        idle.Add(context);
        return page;
    }
}

/// <summary>A template that doesn't work with what it is given.</summary>
internal sealed class TemplateFailure(Finding finding, Exception? cause) : InvalidOperationException(finding.Message, cause)
{
    /// <summary>What to tell the author.</summary>
    public Finding Finding { get; } = finding;
}

/// <summary>A template's surroundings: strict about names, without clock or chance, and escaping all that isn't <see cref="Html"/>.</summary>
internal sealed class HtmlContext : TemplateContext
{
    private static readonly ScriptObject Functions = PureFunctions();

    // A value is put together in memory; the page and what a capture holds are looked at on every round of a loop.
    private const int MostLettersOfValue = 16_000_000;
    private const int MostBytesOfPage = 32_000_000;
    private const int MostLettersOfCapture = 8_000_000;
    private const int MostParts = 100_000;

    private readonly Theme theme;
    private readonly Utf8Output page = new();
    private readonly List<PieceOfPage> pieces = [];
    private bool takesPiecesOut;
    private int parts;

    public HtmlContext(Theme theme)
        : base(Functions)
    {
        this.theme = theme;
        StrictVariables = true;
        EnableRelaxedMemberAccess = false;
        EnableRelaxedTargetAccess = false;
        // The largest book has a few thousand stages on one page; this only stops a template that never ends.
        LoopLimit = 1_000_000;
        LimitToString = MostLettersOfValue;
        OnStringLimit = ScriptLimitBehavior.Throw;
        OutputLimit = int.MaxValue;
        OnOutputLimit = ScriptLimitBehavior.Throw;
        NewLine = "\n";
        PushOutput(page);
    }

    public PageInPieces Print(string template, ScriptObject view, bool takesOut)
    {
        if (!theme.Templates.ContainsKey(template))
            throw new TemplateFailure(PageFindings.NoSuchFile(theme.Name, template), cause: null);
        page.Clear();
        pieces.Clear();
        takesPiecesOut = takesOut;
        parts = 0;
        PushGlobal(view);
        Evaluate(template, SourceSpan());
        PopGlobal();
        return new(page.Copy(), [.. pieces]);
    }

    /// <summary>Writes a part into the page at the place where it is asked for, with the names that are known there.</summary>
    public void Evaluate(string template, SourceSpan from)
    {
        if (++parts > MostParts)
            throw new ScriptRuntimeException(from, $"one page asks for more than {MostParts} parts.");
        var found = theme.Templates.GetValueOrDefault(template)
            ?? throw new ScriptRuntimeException(from, $"the theme {theme.Name} has no {template}.");
        if (found.Parsed.HasErrors)
            throw new TemplateFailure(found.Problems.First(), cause: null);
        try
        {
            Evaluate(found.Parsed.Page!);
        }
        catch (ScriptRuntimeException problem)
        {
            // Scriban wraps what a part throws: the innermost place is the one to mend.
            var finding = (problem.InnerException as TemplateFailure)?.Finding
                ?? PageFindings.Template(ThemeTemplate.Place(found.File, problem.Span), problem.OriginalMessage);
            throw new TemplateFailure(finding, problem);
        }
    }

    /// <inheritdoc/>
    public override TemplateContext Write(SourceSpan span, object? textAsObject)
    {
        switch (textAsObject)
        {
            case null:
                return this;
            case Html html:
                return Write(html.Text);
            default:
                var text = textAsObject as string ?? ObjectToString(textAsObject);
                if (ReferenceEquals(Output, page))
                    page.WriteEscaped(text);
                else
                    Write(System.Net.WebUtility.HtmlEncode(text));
                return this;
        }
    }

    /// <inheritdoc/>
    protected override bool OnStepLoop(ScriptLoopStatementBase loop) =>
        page.Length > MostBytesOfPage || Output is StringBuilderOutput { Builder.Length: > MostLettersOfCapture }
            ? throw new ScriptRuntimeException(loop.Span, $"the page grows past {MostBytesOfPage / 1_000_000} MB.")
            : base.OnStepLoop(loop);

    private static SourceSpan SourceSpan() => new("", default, default);

    private static ScriptObject PureFunctions()
    {
        var all = (ScriptObject)GetDefaultBuiltinObject();
        var pure = new ScriptObject
        {
            ["array"] = all["array"],
            ["string"] = all["string"],
            ["empty"] = all["empty"],
            ["include"] = new OfOneText("name", (page, name, _, from) => page.Evaluate(name, from)),
            ["seal"] = new OfOneText("piece", (page, name, block, from) =>
                page.Seal(name, block ?? throw new ScriptRuntimeException(from, "write “wrap seal”, and “end”."), from)),
        };
        pure.IsReadOnly = true;
        return pure;
    }

    // {{ wrap seal "clue" }} … {{ end }}: what may be read with a card only. In a book that isn't sealed the block stands there as it is.
    private void Seal(string name, ScriptBlockStatement block, SourceSpan from)
    {
        if (!takesPiecesOut)
        {
            Evaluate(block);
            return;
        }

        if (!ReferenceEquals(Output, page))
            throw new ScriptRuntimeException(from, $"“{name}” is sealed within another sealed block, or within a capture.");
        PushOutput(new StringBuilderOutput());
        Evaluate(block);
        var text = ((StringBuilderOutput)PopOutput()).Builder.ToString();
        // A stage can stand in a list more than once, and a piece's name says which piece it is.
        var before = pieces.Count(piece => piece.Of == name);
        var piece = before == 0 ? name : string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{name}-{before + 1}");
        Write($"<div data-sealed=\"{piece}\" data-text=\"");
        pieces.Add(new(piece, name, text, page.Length));
        Write("\"></div>");
    }

    // A function of one text, with a block or without: `include "parts/head.html"`, `wrap seal "clue"`.
    private sealed class OfOneText(string parameter, Action<HtmlContext, string, ScriptBlockStatement?, SourceSpan> act) : IScriptCustomFunction
    {
        public int RequiredParameterCount => 1;

        public int ParameterCount => 1;

        public ScriptVarParamKind VarParamKind => ScriptVarParamKind.None;

        public Type ReturnType => typeof(void);

        public ScriptParameterInfo GetParameterInfo(int index) => new(typeof(string), parameter);

        public object? Invoke(TemplateContext context, ScriptNode? callerContext, ScriptArray arguments, ScriptBlockStatement? blockStatement)
        {
            act((HtmlContext)context, $"{arguments[0]}", blockStatement, callerContext?.Span ?? SourceSpan());
            return null;
        }

        public ValueTask<object?> InvokeAsync(
            TemplateContext context,
            ScriptNode? callerContext,
            ScriptArray arguments,
            ScriptBlockStatement? blockStatement) =>
            ValueTask.FromResult(Invoke(context, callerContext, arguments, blockStatement));
    }
}
