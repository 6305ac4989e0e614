package icequill.agreement;

import icequill.explain.Fact;
import icequill.explain.Phrase;
import icequill.problem.Check;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * When to give notice that an agreement will renew itself. A proposal, to be checked with somebody who knows the law.
 *
 * @param rules that concern the agreement, also where it is uncertain whether they do
 * @param window the days that suit all of them; empty when there is no rule, or no such day
 * @param send the day proposed for sending, within the window
 * @param remarks what must be known about it
 */
public record NoticePlan(List<NoticeRule> rules, Optional<NoticeWindow> window, Optional<LocalDate> send,
        List<Phrase> remarks) {

    /** Days after the window opens within which a notice is sent, so that there is time for the mail before it closes. */
    private static final int FIRST_INSIDE = 3;
    private static final int LAST_INSIDE = 5;

    public NoticePlan {
        rules = List.copyOf(rules);
        remarks = List.copyOf(remarks);
    }

    /**
     * The plan for a business customer.
     *
     * @param jurisdictions by ISO 3166, those of the site and of the contract; at least one
     */
    public static NoticePlan of(RenewalTerms terms, List<String> jurisdictions, NoticeRules known) {
        Check.that(!jurisdictions.isEmpty(), "no place is named");
        List<Phrase> remarks = new ArrayList<>();
        List<NoticeRule> rules = jurisdictions.stream().distinct()
                .flatMap(place -> concerning(place, terms, known, remarks)).toList();
        List<NoticeWindow> windows = rules.stream().map(rule -> rule.window(terms)).toList();
        Optional<NoticeWindow> common = windows.stream().map(Optional::of)
                .reduce((one, other) -> one.flatMap(first -> other.flatMap(first::and))).orElse(Optional.empty());
        if (common.isEmpty() && !rules.isEmpty()) {
            remarks.add(Phrase.of("remark.notice-no-common-day"));
        }
        Optional<LocalDate> inside = common.flatMap(NoticePlan::inside);
        if (common.isPresent() && inside.isEmpty()) {
            remarks.add(Phrase.of("remark.notice-tight", Fact.number(common.get().days(), "day")));
        }
        remarks.add(Phrase.of("remark.notice-adviser"));
        return new NoticePlan(rules, common, inside.or(() -> common.map(NoticeWindow::first)), remarks);
    }

    private static Stream<NoticeRule> concerning(String place, RenewalTerms terms, NoticeRules known,
            List<Phrase> remarks) {
        List<NoticeRule> found = known.of(place, terms.lastDayToRefuse());
        if (found.isEmpty()) {
            remarks.add(Phrase.of("remark.notice-unknown", new Fact.Text(place)));
        }
        List<NoticeRule> concerning = new ArrayList<>();
        for (NoticeRule rule : found) {
            if (!rule.concerns(terms)) {
                remarks.add(Phrase.of("remark.notice-not-concerned", rule.law()));
            } else if (rule.covers() == NoticeRule.Covers.CONSUMERS) {
                remarks.add(Phrase.of("remark.notice-consumers", rule.law()));
            } else {
                concerning.add(rule);
            }
        }
        concerning.stream().filter(rule -> rule.covers() == NoticeRule.Covers.UNCERTAIN)
                .forEach(rule -> remarks.add(Phrase.of("remark.notice-uncertain", rule.law())));
        return concerning.stream();
    }

    /** The first weekday three to five days after the window opens, if as many days are left before it closes. */
    private static Optional<LocalDate> inside(NoticeWindow window) {
        return window.first().plusDays(FIRST_INSIDE).datesUntil(window.first().plusDays(LAST_INSIDE + 1L))
                .filter(day -> day.getDayOfWeek() != DayOfWeek.SATURDAY && day.getDayOfWeek() != DayOfWeek.SUNDAY)
                .findFirst().filter(day -> !day.plusDays(FIRST_INSIDE).isAfter(window.last()));
    }
}
