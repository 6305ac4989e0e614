package icequill.work;

import icequill.problem.Check;
import icequill.problem.Place;
import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * One person's time at the site.
 *
 * @param grade as the labor rates name it
 * @param mustLeave of a visit to come: by when he has left, whatever is left to do; empty where he stays as long as it takes
 * @param spells what the time was spent on, in order, without gaps, from arrival to departure
 */
public record Attendance(String person, String grade, List<Spell> spells, Optional<ZonedDateTime> mustLeave,
        Place place) {

    /** Time spent as it was, or with no need to leave before all is done. */
    public Attendance(String person, String grade, List<Spell> spells, Place place) {
        this(person, grade, spells, Optional.empty(), place);
    }

    /** Time spent on one thing. */
    public record Spell(ZonedDateTime from, ZonedDateTime until, ChargeClass on, Outcome outcome) {
        public Spell {
            Check.that(on.isLabor(), "not labor: " + on);
            Check.that(until.isAfter(from), "ends before it begins: " + from + ", " + until);
        }
    }

    public Attendance {
        spells = List.copyOf(spells);
        Check.that(!spells.isEmpty(), "no time spent");
        for (int i = 1; i < spells.size(); i++) {
            Check.that(spells.get(i).from().equals(spells.get(i - 1).until()), "a gap between spells: " + spells);
        }
    }

    /** The same, so much later; who must leave must leave when he had to. */
    Attendance later(Duration by) {
        return new Attendance(person, grade, spells.stream().map(spell -> new Spell(spell.from().plus(by),
                spell.until().plus(by), spell.on(), spell.outcome())).toList(), mustLeave, place);
    }

    /** The same at the same hours some days later. */
    Attendance onDay(int days) {
        return new Attendance(person, grade, spells.stream().map(spell -> new Spell(spell.from().plusDays(days),
                spell.until().plusDays(days), spell.on(), spell.outcome())).toList(),
                mustLeave.map(leaves -> leaves.plusDays(days)), place);
    }

    public ZonedDateTime arrived() {
        return spells.getFirst().from();
    }

    public ZonedDateTime left() {
        return spells.getLast().until();
    }

    /** Whom the name means, however it is spaced and written; empty for nobody in particular. */
    public Optional<String> known() {
        return known(person);
    }

    /** Whether a name means him. */
    public boolean isCalled(String name) {
        return known().equals(known(name));
    }

    /** The same of a name alone. */
    static Optional<String> known(String person) {
        return Optional.of(person.strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT))
                .filter(name -> !name.isEmpty());
    }

    /** Whether the two share a moment; one that begins when the other ends does not. */
    public boolean overlaps(Attendance other) {
        return arrived().isBefore(other.left()) && other.arrived().isBefore(left());
    }
}
