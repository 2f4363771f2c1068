using HintBook.Cards;
using PdfSharp.Drawing;
using PdfSharp.UniversalAccessibility;

namespace HintBook.Print.Flow;

/// <summary>
/// Writes the tags of a document in reading order (ISO 32000-1, 14.8.4): headings, paragraphs, figures, lists with labels and bodies, tables with rows and
/// cells. A list and a table go on over pages; a paragraph that does so begins again, since what is marked ends with its page.
/// </summary>
/// <param name="structure">The tags of the document, which itself is there.</param>
internal sealed class PaperTags(StructureBuilder structure)
{
    private Group open;
    private bool hasItem;

    private enum Group
    {
        None,
        List,
        Table,
    }

    /// <summary>Ends what is open.</summary>
    public void End() => Enter(Group.None);

    /// <summary>Draws what only adorns.</summary>
    public void Adorn(Action draw)
    {
        structure.BeginArtifact();
        draw();
        structure.End();
    }

    /// <summary>Draws a piece with its tags.</summary>
    /// <param name="placed">The piece.</param>
    /// <param name="isFirst">Whether it is the first of its page.</param>
    /// <param name="goesOn">Whether the piece that follows on the page goes on with it.</param>
    /// <param name="draw">Draws a thing.</param>
    public void Draw(PlacedPiece placed, bool isFirst, bool goesOn, Action<Printed> draw)
    {
        var piece = placed.Piece;
        var things = Moving.By(piece.Things, placed.X, placed.Y);
        Enter(GroupOf(piece));
        if (open != Group.None)
        {
            BeginItem(piece.Continues);
            DrawParts(piece, things.AsSpan(), draw);
            return;
        }

        if (isFirst || !piece.Continues)
            Begin(placed);
        foreach (var thing in things)
            draw(thing);
        if (!goesOn)
            structure.End();
    }

    private static Group GroupOf(Piece piece) =>
        piece.Parts.IsEmpty ? Group.None
        : piece.Parts.Any(part => part.Role is PartRole.Label or PartRole.Body) ? Group.List
        : Group.Table;

    // The groups hold no marks of their own, so they may stay open over pages.
    private void Enter(Group group)
    {
        if (group == open)
            return;
        if (open != Group.None)
        {
            if (hasItem)
                structure.End();
            structure.End();
        }

        (open, hasItem) = (group, false);
        if (group != Group.None)
            structure.BeginGroupingElement(group == Group.List ? "L" : "Table");
    }

    private void BeginItem(bool continues)
    {
        if (hasItem && continues)
            return;
        if (hasItem)
            structure.End();
        structure.BeginGroupingElement(open == Group.List ? "LI" : "TR");
        hasItem = true;
    }

    private void DrawParts(Piece piece, ReadOnlySpan<Printed> things, Action<Printed> draw)
    {
        foreach (var part in piece.Parts)
        {
            if (part.Role == PartRole.Artifact)
                structure.BeginArtifact();
            else
                structure.BeginElement(TagOf(part.Role));
            foreach (var thing in things[..part.Things])
                draw(thing);
            structure.End();
            things = things[part.Things..];
        }
    }

    private static PdfBlockLevelElementTag TagOf(PartRole role) => role switch
    {
        PartRole.Label => PdfBlockLevelElementTag.Label,
        PartRole.Body => PdfBlockLevelElementTag.ListBody,
        PartRole.HeadCell => PdfBlockLevelElementTag.TableHeaderCell,
        _ => PdfBlockLevelElementTag.TableDataCell,
    };

    private void Begin(PlacedPiece placed)
    {
        switch (placed.Piece.Role)
        {
            case Role.Artifact:
                structure.BeginArtifact();
                break;
            case Role.Figure:
                structure.BeginElement(
                    PdfIllustrationElementTag.Figure, placed.Piece.Shows ?? "", new XRect(placed.X, placed.Y, 1, Math.Max(1, placed.Piece.Height)));
                break;
            default:
                structure.BeginElement(placed.Piece.Role switch
                {
                    Role.Title => PdfBlockLevelElementTag.Heading1,
                    Role.Heading => PdfBlockLevelElementTag.Heading2,
                    Role.Subheading => PdfBlockLevelElementTag.Heading3,
                    _ => PdfBlockLevelElementTag.Paragraph,
                });
                break;
        }
    }
}
