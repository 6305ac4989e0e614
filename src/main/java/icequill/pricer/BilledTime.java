package icequill.pricer;

import icequill.money.Exact;
import icequill.pricer.ResolvedVisit.Worker;
import icequill.rates.Grade;
import icequill.rates.LaborRates;
import icequill.work.Attendance;
import icequill.work.Attendance.Spell;
import icequill.work.Band;
import icequill.work.BandWeek.Slice;
import icequill.work.ChargeClass;
import icequill.work.Outcome;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * One person's minutes, worked and billed.
 *
 * @param pieces in order of time; the first one holds what was added to reach the increment or the minimum
 * @param worked real minutes
 * @param billed minutes after both raises
 * @param byMinimum whether it was the minimum, not the increment, that decided
 */
record BilledTime(List<Piece> pieces, long worked, long billed, boolean byMinimum) {

    /** What minutes are added up by. */
    record Key(Grade grade, Band band, ChargeClass on, Outcome outcome) {}

    /** Minutes of one kind. */
    record Piece(Key key, long worked, long billed) {}

    long topUp() {
        return billed - worked;
    }

    /** Billed minutes of one kind. */
    long billed(Key key) {
        return pieces.stream().filter(piece -> piece.key().equals(key)).mapToLong(Piece::billed).sum();
    }

    static BilledTime of(Worker worker, LaborRates rates) {
        List<Piece> pieces = new ArrayList<>();
        for (Spell spell : worker.stays().stream().flatMap(stay -> stay.spells().stream()).toList()) {
            for (Slice slice : rates.week().split(spell.from(), spell.until())) {
                Key key = new Key(worker.grade(), slice.band(), spell.on(), spell.outcome());
                pieces.add(new Piece(key, slice.minutes(), slice.minutes()));
            }
        }
        long worked = worker.stays().stream().mapToLong(Attendance::minutes).sum();
        long raised = raised(worked, rates.increment());
        long billed = Math.max(raised, worker.grade().minimum());
        Piece first = pieces.getFirst();
        pieces.set(0, new Piece(first.key(), first.worked(), first.billed() + billed - worked));
        return new BilledTime(List.copyOf(pieces), worked, billed, billed > raised);
    }

    private static long raised(long minutes, BigDecimal increment) {
        BigFraction raised = Exact.upToMultiple(BigFraction.of(minutes), increment);
        return raised.getNumerator().divide(raised.getDenominator()).longValueExact();
    }
}
