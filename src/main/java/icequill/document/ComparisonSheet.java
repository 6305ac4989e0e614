package icequill.document;

import icequill.explain.Explanation;
import icequill.explain.Phrase;
import icequill.party.Language;
import icequill.party.Machine;
import icequill.party.PaperSize;
import icequill.party.Shop;
import icequill.party.Wording;
import icequill.work.Band;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * What a year of each plan costs beside a number of calls, all before tax.
 *
 * @param call a typical call, line by line, at list; empty for the mean of those that are expected when nobody cleans
 * @param callPrice what it comes to
 * @param lastYear calls in the last twelve months; empty when nobody counted
 * @param sums what one call, two calls and so on come to
 * @param reasons what the comparison leaves out
 * @param outlook what to expect of each way; empty where the shop does not say by what to forecast
 */
public record ComparisonSheet(LocalDate date, Shop shop, Language language, PaperSize size, String customer,
        Where where, List<Machine> machines, Band band, List<CallLine> call, MonetaryAmount callPrice,
        Optional<Integer> lastYear, List<Plan> plans, List<Sum> sums, List<Phrase> reasons,
        Optional<Outlook> outlook) implements Paper {

    /** A part of a typical call. */
    public record CallLine(Phrase text, MonetaryAmount net, Explanation how) {}

    /**
     * A plan beside calls.
     *
     * @param price of a year
     * @param singly what its visits cost without the plan
     * @param breakEven the fewest calls a year that cost at least as much; empty where no number does
     * @param how the price of the plan over that of a call: the break-even before it is rounded up
     */
    public record Plan(Wording name, int fullCleans, int visits, MonetaryAmount price, MonetaryAmount singly,
            Optional<Integer> breakEven, Explanation how) {}

    /**
     * So many calls.
     *
     * @param price of them together
     */
    public record Sum(int calls, MonetaryAmount price, Explanation how) {}

    public ComparisonSheet {
        machines = List.copyOf(machines);
        call = List.copyOf(call);
        plans = List.copyOf(plans);
        sums = List.copyOf(sums);
        reasons = List.copyOf(reasons);
    }
}
