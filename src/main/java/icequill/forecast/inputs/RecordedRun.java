package icequill.forecast.inputs;

import icequill.forecast.fit.DatedRun.Days;
import icequill.forecast.fit.Side;
import icequill.party.SiteKind;
import icequill.problem.Place;
import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;

/**
 * A run of one side.
 *
 * @param worse what makes dirt work faster at its site, besides the kind of site
 * @param from empty where nobody knows how long its dirt had gathered
 * @param watched from when on its stops are on record; empty for all the time
 */
public record RecordedRun(String machine, SiteKind kind, Set<SiteFactors.Kind> worse, Side side, Optional<Days> from,
        Days until, Optional<LocalDate> watched, End end, Place place) {

    /** How a run ended. */
    public enum End {
        /** By a stop. */
        STOPPED,
        /** By a stop after which the machine was only made to run again. */
        RESTARTED,
        /** By a cleaning or brushing. */
        CLEANED,
        /** Not yet. */
        RUNNING
    }
}
