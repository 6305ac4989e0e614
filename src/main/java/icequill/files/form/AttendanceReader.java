package icequill.files.form;

import icequill.files.yaml.Fields;
import icequill.problem.Code;
import icequill.work.Attendance;
import icequill.work.Attendance.Spell;
import icequill.work.ChargeClass;
import icequill.work.Outcome;
import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Who came, when, and what the time was spent on. */
record AttendanceReader(LocalMoments times) {

    /** Of one stay. */
    static final Duration LONGEST = Duration.ofHours(24);

    /** Empty when no time of it could be read, which is then reported. */
    Optional<Attendance> read(Fields entry) {
        Optional<ZonedDateTime> arrived = times.at(entry, "arrived");
        Optional<ZonedDateTime> left = times.at(entry, "left");
        if (arrived.isEmpty() || left.isEmpty() || !inOrder(entry, arrived.get(), left.get())) {
            return Optional.empty();
        }
        List<Spell> spells = entry.entries().containsKey("spent")
                ? spells(entry, arrived.get(), left.get())
                : on(entry, entry).map(on -> new Spell(arrived.get(), left.get(), on, Outcomes.of(entry, "outcome")))
                        .stream().toList();
        return spells.isEmpty()
                ? Optional.empty()
                : Optional.of(new Attendance(entry.text("name").orElse(""), entry.text("grade").orElse(""), spells,
                        mustLeave(entry, arrived.get()), entry.place("grade")));
    }

    private Optional<ZonedDateTime> mustLeave(Fields entry, ZonedDateTime arrived) {
        Optional<ZonedDateTime> leaves = times.at(entry, "mustLeave");
        leaves.filter(moment -> !moment.isAfter(arrived)).ifPresent(moment -> entry.problems().add(Code.WRONG_ORDER,
                entry.place("mustLeave"),
                "must leave " + moment.toLocalDateTime() + ", but arrives " + arrived.toLocalDateTime(),
                "a time after the arrival"));
        return leaves.filter(moment -> moment.isAfter(arrived));
    }

    /** What a spell was for, as it says itself or else its person; neither is a problem, for tax goes by it. */
    private static Optional<ChargeClass> on(Fields spell, Fields person) {
        if (!spell.entries().containsKey("on") && !person.entries().containsKey("on")) {
            spell.problems().add(Code.MISSING, spell.place(), "what the time was spent on is missing",
                    "on: cleaning, repair, diagnosis or travel");
            return Optional.of(ChargeClass.CLEANING);
        }
        Fields teller = spell.entries().containsKey("on") ? spell : person;
        return teller.constant("on", ChargeClass.class).filter(ChargeClass::isLabor);
    }

    private static boolean inOrder(Fields entry, ZonedDateTime arrived, ZonedDateTime left) {
        if (!left.isAfter(arrived)) {
            entry.problems().add(Code.WRONG_ORDER, entry.place("left"),
                    "left " + left.toLocalDateTime() + ", but arrived " + arrived.toLocalDateTime(),
                    "a time after the arrival");
            return false;
        }
        if (Duration.between(arrived, left).compareTo(LONGEST) > 0) {
            entry.problems().add(Code.OUT_OF_RANGE, entry.place("left"),
                    "a stay of " + Duration.between(arrived, left).toHours() + " hours", "at most 24 hours");
            return false;
        }
        return true;
    }

    private List<Spell> spells(Fields entry, ZonedDateTime arrived, ZonedDateTime left) {
        List<Spell> spells = new ArrayList<>();
        ZonedDateTime from = arrived;
        for (Fields spent : entry.children("spent")) {
            Optional<ZonedDateTime> until = times.at(spent, "until");
            Optional<ChargeClass> on = on(spent, entry);
            if (until.isEmpty() || on.isEmpty()) {
                return List.of();
            }
            if (!until.get().isAfter(from)) {
                spent.problems().add(Code.WRONG_ORDER, spent.place("until"),
                        "until " + until.get().toLocalDateTime() + ", but it begins " + from.toLocalDateTime(),
                        "a later time");
                return List.of();
            }
            spells.add(new Spell(from, until.get(), on.get(),
                    spent.constant("outcome", Outcome.class).orElse(Outcomes.of(entry, "outcome"))));
            from = until.get();
        }
        if (!from.isEqual(left)) {
            entry.problems().add(Code.WRONG_ORDER, entry.place("spent"),
                    "the time spent ends " + from.toLocalDateTime() + ", but the person left " + left.toLocalDateTime(),
                    "the last \"until\" is the time of \"left\"");
            return List.of();
        }
        return spells;
    }
}
