namespace HintBook.Publishing.Visits;

/// <summary>Whether a card that was printed for a place where the site was before still leads to its page.</summary>
internal static class OldCardCheck
{
    /// <summary>What is wrong with the answer at an old place; null where nothing is.</summary>
    public static VisitFault? Fault(OldCard card, Answer answer)
    {
        if (answer.Redirects.FirstOrDefault(to => to.Fragment.Length > 0) is { } cut)
        {
            return Told(
                $"An old card is redirected to {cut}, and what stands behind “#” in its address is lost.",
                "Tell that host to redirect to addresses without a “#”.");
        }

        if (answer is { Failure: null, Status: 200 } && (FileCheck.Holds(answer, card.File) || FileCheck.Holds(answer, card.LeadsOn)))
            return null;
        if (answer is { Failure: null, Status: 200 } && FileCheck.Refreshes(answer))
        {
            return Told(
                "An old card leads on by a refresh, and what stands behind “#” in its address is lost.",
                "Put the pages that lie ready in “moved” there, or have the host redirect with status 301.");
        }

        return Told(
            answer.Failure is { } failure ? $"An old card leads nowhere: it {failure}." : $"An old card doesn't lead to {card.Now} (status {answer.Status}).",
            "Put the pages that lie ready in “moved” there, or have that host redirect every page with status 301.");

        VisitFault Told(string message, string help) => new(card.Address, $"the card printed for {card.Address}", message, help);
    }
}
