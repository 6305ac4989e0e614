package icequill.pricer;

import icequill.money.Exact;
import icequill.pricer.ResolvedVisit.Worker;
import icequill.rates.Counting.Overtime;
import icequill.rates.Grade;
import icequill.rates.LaborRates;
import icequill.work.Attendance.Spell;
import icequill.work.Band;
import icequill.work.BandWeek.Slice;
import icequill.work.ChargeClass;
import icequill.work.Outcome;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import javax.money.MonetaryAmount;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Minutes that are counted together, worked and billed: one person's, or everybody's.
 *
 * @param pieces by person, in order of time; the first one holds what was added to reach the increment or the minimum
 * @param worked real minutes
 * @param billed minutes after both raises
 * @param byMinimum whether it was the minimum, not the increment, that decided
 * @param increment that they were raised to
 * @param included of the billed minutes, those that the service call pays for; they are in no piece any more
 */
record BilledTime(List<Piece> pieces, long worked, long billed, boolean byMinimum, BigDecimal increment,
        long included) {

    private static final long HOUR = 60;

    /** What an hour of minutes is charged by. */
    enum Rate {
        WORK, FIRST_HOUR, TRAVEL,
        /** At the price of the overtime's band. */
        OVERTIME
    }

    /** What minutes are added up by. */
    record Key(Grade grade, Band band, ChargeClass on, Outcome outcome, Rate rate) {

        MonetaryAmount hourly() {
            return switch (rate) {
            case WORK, OVERTIME -> grade.hourly().work(band);
            case FIRST_HOUR -> grade.hourly().firstHour(band).orElseThrow();
            case TRAVEL -> grade.hourly().travel(band).orElseThrow();
            };
        }

        private Key at(Rate other) {
            return new Key(grade, band, on, outcome, other);
        }
    }

    /**
     * Minutes of one kind.
     *
     * @param person by position among those who are counted together
     */
    record Piece(Key key, int person, long worked, long billed) {

        /** So many of the minutes, in another kind. */
        private Piece first(long minutes, Key as) {
            return new Piece(as, person, Math.min(worked, minutes), minutes);
        }

        private Piece after(long minutes) {
            return new Piece(key, person, worked - Math.min(worked, minutes), billed - minutes);
        }

        private Piece less(long minutes) {
            return new Piece(key, person, worked, billed - minutes);
        }
    }

    long topUp() {
        return billed - worked;
    }

    /** Billed minutes of one kind, person by person, of those who have any. */
    List<Long> billed(Key key) {
        return pieces.stream().map(Piece::person).distinct()
                .map(person -> pieces.stream().filter(piece -> piece.person() == person && piece.key().equals(key))
                        .toList())
                .filter(own -> !own.isEmpty()).map(own -> own.stream().mapToLong(Piece::billed).sum()).toList();
    }

    /**
     * The time of people who are counted together.
     *
     * @param people in the order of their arrival, at least one
     * @param included minutes that the service call pays for
     */
    static BilledTime of(List<Worker> people, LaborRates rates, long included) {
        List<Piece> pieces = new ArrayList<>();
        for (int person = 0; person < people.size(); person++) {
            pieces.addAll(pieces(people.get(person), person, rates));
        }
        Band arrival = rates.week().at(people.getFirst().stays().getFirst().arrived().toLocalDateTime());
        long worked = pieces.stream().mapToLong(Piece::worked).sum();
        BigDecimal increment = rates.counting().increment(arrival);
        long raised = raised(worked, increment);
        long minimum = people.stream().mapToLong(worker -> worker.grade().minimum(arrival)).max().orElseThrow();
        long billed = Math.max(raised, minimum);
        pieces.set(0, pieces.getFirst().less(worked - billed));
        long paid = Math.min(included,
                pieces.stream().filter(piece -> piece.person() == 0).mapToLong(Piece::billed).sum());
        return new BilledTime(List.copyOf(withoutIncluded(withFirstHour(pieces), paid)), worked, billed,
                billed > raised, increment, paid);
    }

    private static List<Piece> pieces(Worker worker, int person, LaborRates rates) {
        List<Piece> pieces = new ArrayList<>();
        for (Spell spell : worker.stays().stream().flatMap(stay -> stay.spells().stream()).toList()) {
            for (Slice slice : rates.week().split(spell.from(), spell.until())) {
                Key key = key(worker.grade(), slice.band(), spell);
                long usual = rates.counting().overtime().map(Overtime::after).map(Long::valueOf)
                        .map(after -> Math.max(0, after - pieces.stream().mapToLong(Piece::worked).sum()))
                        .map(left -> Math.min(left, slice.minutes())).orElse(slice.minutes());
                if (usual > 0) {
                    pieces.add(new Piece(key, person, usual, usual));
                }
                if (usual < slice.minutes()) {
                    long over = slice.minutes() - usual;
                    pieces.add(new Piece(overtime(key, rates.counting().overtime().orElseThrow()), person, over,
                            over));
                }
            }
        }
        return pieces;
    }

    private static Key key(Grade grade, Band band, Spell spell) {
        boolean isTravel = spell.on() == ChargeClass.TRAVEL && grade.hourly().travel(band).isPresent();
        return new Key(grade, band, spell.on(), spell.outcome(), isTravel ? Rate.TRAVEL : Rate.WORK);
    }

    /** Never cheaper than the hour is anyway; travel keeps its own price. */
    private static Key overtime(Key key, Overtime overtime) {
        boolean isDearer = key.rate() == Rate.WORK
                && key.grade().hourly().work(overtime.band()).isGreaterThan(key.hourly());
        return isDearer ? new Key(key.grade(), overtime.band(), key.on(), key.outcome(), Rate.OVERTIME) : key;
    }

    /** The first sixty minutes of work have their own price, where their grade and band have one. */
    private static List<Piece> withFirstHour(List<Piece> pieces) {
        List<Piece> result = new ArrayList<>();
        long left = HOUR;
        for (Piece piece : pieces) {
            boolean counts = piece.person() == 0 && piece.key().rate() == Rate.WORK;
            long first = counts ? Math.min(left, piece.billed()) : 0;
            boolean isPriced = first > 0 && piece.key().grade().hourly().firstHour(piece.key().band()).isPresent();
            left -= first;
            if (isPriced) {
                result.add(piece.first(first, piece.key().at(Rate.FIRST_HOUR)));
            }
            if (!isPriced || piece.billed() > first) {
                result.add(isPriced ? piece.after(first) : piece);
            }
        }
        return result;
    }

    /** The first person's first minutes. */
    private static List<Piece> withoutIncluded(List<Piece> pieces, long included) {
        List<Piece> result = new ArrayList<>();
        long left = included;
        for (Piece piece : pieces) {
            long paid = piece.person() == 0 ? Math.min(left, piece.billed()) : 0;
            left -= paid;
            result.add(piece.less(paid));
        }
        return result;
    }

    private static long raised(long minutes, BigDecimal increment) {
        BigFraction raised = Exact.upToMultiple(BigFraction.of(minutes), increment);
        return raised.getNumerator().divide(raised.getDenominator()).longValueExact();
    }

    /** Groups of people who are counted together, in the order of their arrival. */
    static List<List<Worker>> together(List<Worker> people, LaborRates rates) {
        return switch (rates.counting().per()) {
        case PERSON -> people.stream().map(List::of).toList();
        case VISIT -> List.of(people.stream()
                .sorted(Comparator.comparing((Worker worker) -> worker.stays().getFirst().arrived())).toList());
        };
    }

    /** Whose first minutes the service call pays for: his who came first. */
    static Worker first(List<Worker> people) {
        return people.stream().min(Comparator.comparing((Worker worker) -> worker.stays().getFirst().arrived()))
                .orElseThrow();
    }
}
