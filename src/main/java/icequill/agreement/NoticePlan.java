package icequill.agreement;

import icequill.explain.Fact;
import icequill.explain.Phrase;
import icequill.problem.Check;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * When to give notice that an agreement will renew itself. A proposal, to be checked with somebody who knows the law.
 *
 * @param terms of the agreement that ends
 * @param rules that concern the agreement, also where it is uncertain whether they do
 * @param window the days that suit all of them, none after the last day to refuse; empty when there is no rule, or no such day
 * @param send the day proposed for sending, a working day within the window; empty when the window is over
 * @param remarks what must be known about it
 */
public record NoticePlan(RenewalTerms terms, List<NoticeRule> rules, Optional<NoticeWindow> window,
        Optional<LocalDate> send, List<Phrase> remarks) {

    /** Days inside the window at either end, so that there is time for the mail before it closes. */
    private static final int INSIDE = 3;

    public NoticePlan {
        rules = List.copyOf(rules);
        remarks = List.copyOf(remarks);
    }

    /**
     * The plan for a business customer.
     *
     * @param jurisdictions by ISO 3166, those of the site and of the contract; at least one
     * @param workday whether the shop works on a day
     * @param day the notice bears; no earlier one is proposed
     */
    public static NoticePlan of(RenewalTerms terms, List<String> jurisdictions, NoticeRules known,
            Predicate<LocalDate> workday, LocalDate day) {
        Check.that(!jurisdictions.isEmpty(), "no place is named");
        List<Phrase> remarks = new ArrayList<>();
        List<NoticeRule> rules = jurisdictions.stream().distinct()
                .flatMap(place -> concerning(place, terms, known, remarks)).toList();
        rules.stream().filter(rule -> rule.window(terms).first().isAfter(terms.lastDayToRefuse()))
                .forEach(rule -> remarks.add(Phrase.of("remark.notice-after-refusal", rule.law(),
                        new Fact.Day(rule.window(terms).first()), new Fact.Day(terms.lastDayToRefuse()))));
        Optional<NoticeWindow> common = rules.stream().map(rule -> rule.window(terms)).map(Optional::of)
                .reduce((one, other) -> one.flatMap(first -> other.flatMap(first::and))).orElse(Optional.empty())
                .flatMap(window -> window.until(terms.lastDayToRefuse()));
        if (common.isEmpty() && !rules.isEmpty()) {
            remarks.add(Phrase.of("remark.notice-no-common-day"));
        }
        Optional<LocalDate> send = common.filter(window -> !window.last().isBefore(day))
                .flatMap(window -> proposed(window, workday, day, remarks));
        remarks.add(Phrase.of("remark.notice-adviser"));
        return new NoticePlan(terms, rules, common, send, remarks);
    }

    /** The first working day well inside what is left of the window; else the first one in it that leaves most days; else none. */
    private static Optional<LocalDate> proposed(NoticeWindow window, Predicate<LocalDate> workday, LocalDate day,
            List<Phrase> remarks) {
        LocalDate first = day.isAfter(window.first()) ? day : window.first();
        List<LocalDate> days = first.datesUntil(window.last().plusDays(1)).filter(workday).toList();
        Optional<LocalDate> inside = days.stream().filter(each -> !each.isBefore(window.first().plusDays(INSIDE))
                && !each.isAfter(window.last().minusDays(INSIDE))).findFirst();
        if (inside.isEmpty()) {
            Fact left = Fact.number(new NoticeWindow(first, window.last()).days(), "day");
            remarks.add(days.isEmpty()
                    ? Phrase.of("remark.notice-no-working-day", new Fact.Day(first), new Fact.Day(window.last()))
                    : Phrase.of(first.equals(window.first()) ? "remark.notice-tight" : "remark.notice-days-left",
                            left));
        }
        return inside.or(() -> days.stream().findFirst());
    }

    /** That a notice must not bear a day, as if it were in time. */
    public Optional<Problem> problem(LocalDate day, Place place) {
        return wrong(day).map(message -> new Problem(Code.OUT_OF_RANGE, place, message,
                window.map(days -> "--date from " + days.first() + " to " + days.last() + "; or ").orElse("")
                        + "--late with the reason, for a notice that does not claim that the agreement renews"));
    }

    private Optional<String> wrong(LocalDate day) {
        if (!day.isBefore(terms.begins())) {
            return Optional.of("dated " + day + ", but the agreement ends on " + terms.term().lastDay());
        }
        if (day.isAfter(terms.lastDayToRefuse())) {
            return Optional.of("dated " + day + ", after " + terms.lastDayToRefuse() + ", the last day to refuse");
        }
        if (day.isBefore(terms.term().start())) {
            return Optional.of("dated " + day + ", before the agreement begins on " + terms.term().start());
        }
        boolean outside = window.map(days -> !days.contains(day)).orElseGet(() -> !rules.isEmpty()
                && rules.stream().noneMatch(rule -> rule.window(terms).contains(day)));
        return outside ? Optional.of("dated " + day + ", outside the days for the notice") : Optional.empty();
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
}
