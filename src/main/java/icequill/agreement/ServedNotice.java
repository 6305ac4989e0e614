package icequill.agreement;

import icequill.explain.Fact;
import icequill.explain.Phrase;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Whether a notice of renewal counts, by the laws on record and the agreement itself. A proposal, to be checked with somebody who knows the
 * law: whether the day of posting counts or that of arrival is not settled, so both must be within the window, as far as they are known.
 *
 * @param why it does not count; empty where it does
 */
public record ServedNotice(SentNotice notice, List<Phrase> why) {

    public ServedNotice {
        why = List.copyOf(why);
    }

    /** One that was sent, held against the terms and the rules that concern them. */
    public static ServedNotice of(SentNotice notice, RenewalTerms terms, List<NoticeRule> rules) {
        List<Phrase> why = new ArrayList<>();
        notice.cameBack().ifPresent(day -> why.add(Phrase.of("served.came-back", new Fact.Day(day))));
        LocalDate last = terms.lastDayToRefuse();
        latest(notice).filter(day -> day.isAfter(last)).ifPresent(
                day -> why.add(Phrase.of("served.after-refusal", new Fact.Day(day), new Fact.Day(last))));
        for (NoticeRule rule : rules) {
            if (!rule.delivery().contains(notice.way())) {
                why.add(Phrase.of("served.way", rule.law(), notice.way().word()));
            }
            NoticeWindow window = rule.window(terms);
            days(notice).filter(day -> !window.contains(day)).findFirst().ifPresent(day -> why.add(Phrase.of(
                    "served.outside", rule.law(), new Fact.Day(day), new Fact.Day(window.first()),
                    new Fact.Day(window.last()))));
        }
        return new ServedNotice(notice, why.stream().distinct().toList());
    }

    private static Stream<LocalDate> days(SentNotice notice) {
        return Stream.concat(Stream.of(notice.sent()), notice.received().stream());
    }

    private static Optional<LocalDate> latest(SentNotice notice) {
        return days(notice).max(LocalDate::compareTo);
    }

    public boolean counts() {
        return why.isEmpty();
    }
}
