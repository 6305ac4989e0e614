package icequill.files.pricing;

import icequill.agreement.MinimumLength;
import icequill.agreement.NoticeRule;
import icequill.agreement.NoticeRule.Anchor;
import icequill.agreement.NoticeRule.Covers;
import icequill.files.yaml.Fields;
import icequill.files.yaml.Names;
import icequill.party.Period;
import icequill.party.Wording;
import icequill.problem.Code;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;

/** Makes the laws about renewal notices from a file of kind notices. */
final class NoticesReader {

    private NoticesReader() {
    }

    static List<NoticeRule> read(Fields fields) {
        return Names.list(fields.children("rules"), NoticesReader::rule);
    }

    private static Optional<NoticeRule> rule(String id, Fields entry) {
        Optional<Covers> covers = entry.constant("covers", Covers.class);
        Optional<Anchor> anchor = entry.constant("anchor", Anchor.class);
        Optional<Integer> earliest = entry.integer("earliest").filter(days -> days >= 0);
        Optional<Integer> latest = entry.integer("latest").filter(days -> days >= 0);
        Optional<Period> period = period(entry);
        Optional<Wording> consequence = entry.wording("consequence");
        List<MinimumLength> minimums = entry.children("minimums").stream().flatMap(least -> minimum(least).stream())
                .toList();
        if (earliest.isEmpty() || latest.isEmpty() || covers.isEmpty() || anchor.isEmpty() || period.isEmpty()
                || consequence.isEmpty()) {
            return Optional.empty();
        }
        if (earliest.get() < latest.get()) {
            entry.problems().add(Code.WRONG_ORDER, entry.place("latest"),
                    "earliest " + earliest.get() + " days before, latest " + latest.get(),
                    "earliest is the larger number of days before the anchor");
            return Optional.empty();
        }
        return entry.wording("name").flatMap(name -> entry.text("jurisdiction")
                .map(place -> new NoticeRule(id, place, name, covers.get(), period.get(), anchor.get(), earliest.get(),
                        latest.get(), minimums, entry.constants("delivery", NoticeRule.Delivery.class),
                        entry.constants("contents", NoticeRule.Content.class), consequence.get(),
                        entry.text("source").orElse(""))));
    }

    /** Always, unless the entry says since when; empty when what it says was wrong. */
    private static Optional<Period> period(Fields entry) {
        return entry.entries().containsKey("effective")
                ? entry.child("effective").flatMap(effective -> effective.day("from")
                        .flatMap(from -> effective.period(from)))
                : Optional.of(new Period(LocalDate.MIN, Optional.empty()));
    }

    private static Optional<MinimumLength> minimum(Fields entry) {
        Optional<Integer> moreThan = entry.integer("moreThan");
        Optional<Integer> atLeast = entry.integer("atLeast");
        if (entry.entries().containsKey("moreThan") == entry.entries().containsKey("atLeast")) {
            entry.problems().add(Code.NOT_ALLOWED, entry.place(), "needs moreThan or atLeast", "one of the two");
        }
        Optional<ChronoUnit> unit = entry.text("unit")
                .map(text -> text.equals("day") ? ChronoUnit.DAYS : ChronoUnit.MONTHS);
        return entry.constant("of", MinimumLength.Of.class)
                .flatMap(of -> unit.flatMap(counted -> moreThan.or(() -> atLeast)
                        .map(number -> new MinimumLength(of, number, counted, moreThan.isEmpty()))));
    }
}
