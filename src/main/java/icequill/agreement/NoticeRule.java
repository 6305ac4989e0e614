package icequill.agreement;

import icequill.explain.ConstantKey;
import icequill.explain.Fact;
import icequill.explain.Phrase;
import icequill.party.Period;
import icequill.party.Wording;
import icequill.problem.Check;
import java.time.LocalDate;
import java.util.List;

/**
 * A law about notices of renewal, as far as it can be data. It is never more than a proposal: somebody who knows decides.
 *
 * @param jurisdiction by ISO 3166, such as US-NY
 * @param period in which the law holds
 * @param earliest days before the anchor at which the window begins, not below {@code latest}
 * @param latest days before the anchor at which it ends, from 0
 * @param minimums all of which must be met
 * @param contents what the notice must say
 * @param consequence of missing it
 * @param source where it was read
 */
public record NoticeRule(String id, String jurisdiction, Wording name, Covers covers, Period period, Anchor anchor,
        int earliest, int latest, List<MinimumLength> minimums, List<Delivery> delivery, List<Content> contents,
        Wording consequence, String source) {

    /** Whether it protects customers that are businesses. */
    public enum Covers {
        BUSINESS, CONSUMERS, UNCERTAIN
    }

    /** The day from which days are counted back. */
    public enum Anchor {
        LAST_DAY_TO_REFUSE,
        /** The first day of the renewal. */
        RENEWAL
    }

    /** A way in which a notice may be given. */
    public enum Delivery {
        PERSONAL, CERTIFIED_MAIL, MAIL, EMAIL, MONTHLY_STATEMENT;

        /** Its name, for a reader. */
        public Fact word() {
            return NoticeRule.word("delivery", this);
        }
    }

    /** Something that a notice must say, or how. */
    public enum Content {
        RENEWAL_CLAUSE, WILL_RENEW, LAST_DAY_TO_REFUSE, PRICE_CHANGE, HOW_TO_REFUSE, CHANGED_TERMS_IN_BOLD,
        PLAIN_LANGUAGE;

        /** Its name, for a reader. */
        public Fact word() {
            return NoticeRule.word("content", this);
        }
    }

    public NoticeRule {
        Check.that(latest >= 0 && earliest >= latest, "a window from " + earliest + " to " + latest + " days before");
        minimums = List.copyOf(minimums);
        delivery = List.copyOf(delivery);
        contents = List.copyOf(contents);
    }

    /** Whether the terms are long enough for it, and it is law on the last day to refuse. */
    public boolean concerns(RenewalTerms terms) {
        return period.contains(terms.lastDayToRefuse()) && minimums.stream().allMatch(least -> least.isMetBy(terms));
    }

    public NoticeWindow window(RenewalTerms terms) {
        LocalDate from = switch (anchor) {
        case LAST_DAY_TO_REFUSE -> terms.lastDayToRefuse();
        case RENEWAL -> terms.begins();
        };
        return new NoticeWindow(from.minusDays(earliest), from.minusDays(latest));
    }

    /** Its name, for a reader. */
    public Fact law() {
        return name.named();
    }

    /** What comes of missing it, and where that was read. */
    public Phrase missed() {
        return Phrase.of("renewal.missed", law(), consequence.named(),
                new Fact.Text(source));
    }

    private static Fact word(String group, Enum<?> constant) {
        return new Fact.Word(group + "." + ConstantKey.of(constant));
    }
}
