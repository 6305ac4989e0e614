package icequill.document;

import icequill.explain.Explanation;
import icequill.explain.Phrase;
import icequill.party.Address;
import icequill.party.Language;
import icequill.party.Machine;
import icequill.party.PaperSize;
import icequill.party.Shop;
import icequill.work.Caution;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * What a customer may brush himself, how, and what it costs him beside our coming for it.
 *
 * @param yours machines that the customer's staff may brush; never empty
 * @param left machines that a technician must brush, if anybody
 * @param savings of brushing every month; empty where the shop does not say by what to forecast
 */
public record BrushingSheet(LocalDate date, Shop shop, Language language, PaperSize size, String customer,
        String site, Optional<String> storeNumber, Address address, List<Machine> yours, List<Left> left,
        Comparison comparison, Optional<Savings> savings, List<Caution> cautions)
        implements
        Paper {

    /** A machine that is not for the customer's staff. */
    public record Left(Machine machine, List<Reason> reasons) {
        public Left {
            reasons = List.copyOf(reasons);
        }
    }

    /** Why it is not. */
    public enum Reason {
        /** Nothing in it is brushed. */
        WATER_COOLED,
        /** Its condenser stands elsewhere, often on a roof. */
        REMOTE,
        /** It stands on a bin or dispenser. */
        HEAD,
        /** It has no plug to pull. */
        HARD_WIRED,
        /** Nobody has seen that its condenser can be reached without taking off a panel. */
        BEHIND_PANEL
    }

    /**
     * Ours beside theirs, before tax.
     *
     * @param ours the lines of a visit of ours for one brushing
     * @param visit their sum
     * @param own one brushing by the customer's own people
     * @param brush bought once
     * @param difference what the customer keeps the first time, if he would have called us for it
     * @param year twelve brushings of his own and the brush
     */
    public record Comparison(List<Charge> ours, Sum visit, Sum own, MonetaryAmount brush, Sum difference, Sum year) {
        public Comparison {
            ours = List.copyOf(ours);
        }
    }

    /**
     * What a year of brushing every month may save; only what is kept is rounded, once.
     *
     * @param calls that dirty condensers would have brought and then do not, to a tenth
     * @param spared what those would have cost
     * @param bought what was paid for brushings in the last twelve months
     * @param kept both less twelve brushings of his own and the brush; negative where they cost more
     * @param electricity less of it in a year, beside the sum; empty where nothing is known of the machines
     * @param inputs when the condensers were brushed last, and which calls there were, each with who says so
     */
    public record Savings(BigDecimal calls, MonetaryAmount spared, MonetaryAmount bought, MonetaryAmount kept,
            Optional<Electricity> electricity, List<Outlook.Input> inputs) {
        public Savings {
            inputs = List.copyOf(inputs);
        }
    }

    /** A range: no dirt to speak of, some, much. */
    public record Electricity(MonetaryAmount low, MonetaryAmount middle, MonetaryAmount high) {}

    /** One line of ours. */
    public record Charge(Phrase text, MonetaryAmount net, Explanation how) {}

    /** An amount, and how it was figured. */
    public record Sum(MonetaryAmount amount, Explanation how) {}

    public BrushingSheet {
        yours = List.copyOf(yours);
        left = List.copyOf(left);
        cautions = List.copyOf(cautions);
    }
}
