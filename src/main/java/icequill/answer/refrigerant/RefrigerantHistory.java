package icequill.answer.refrigerant;

import icequill.life.refrigerant.LeakRate;
import icequill.life.refrigerant.Verdict;
import icequill.work.RefrigerantWork.Purpose;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What was added to machines and recovered from them. All weights are ounces; sentences are in the language of the reader.
 *
 * @param site by id; empty for all of the shop
 * @param machine by id; empty for all
 * @param until the last day
 * @param visits by day
 * @param machines as they stand by the last of their visits
 * @param notes what the reader has to know of all of it
 */
public record RefrigerantHistory(Optional<String> site, Optional<String> machine, Optional<LocalDate> from,
        Optional<LocalDate> until, List<Visit> visits, List<Machine> machines, List<Kind> kinds,
        List<Cylinder> cylinders, List<String> notes) {

    /**
     * What a visit did at a machine.
     *
     * @param visit by id
     * @param site by id
     * @param machine by id
     * @param refrigerant by name
     * @param charge of the machine when it is full
     * @param technician with his certificates
     * @param test whether a repair holds
     * @param lost what had leaked
     * @param figured how that follows from what was added; missing where it is all of it
     * @param rates by both methods; none where nothing had leaked
     */
    public record Visit(String visit, LocalDate day, String site, String siteName, String machine,
            String machineName, String refrigerant, BigDecimal charge, Purpose purpose, BigDecimal added,
            Optional<String> from, BigDecimal recovered, Optional<String> into, Optional<String> technician,
            Optional<String> leak, Optional<String> repair, Optional<String> test, BigDecimal lost,
            Optional<String> figured, List<Rate> rates) {

        public Visit {
            rates = List.copyOf(rates);
        }
    }

    /**
     * A leak rate.
     *
     * @param percent of the full charge in a year
     * @param how it was figured
     */
    public record Rate(LeakRate.Method method, BigDecimal percent, String how) {}

    /**
     * A machine.
     *
     * @param machine by id
     * @param rates of its last loss; none where it lost nothing
     * @param outcome whether a rule asks for a leak rate, and how the machine stands by it
     * @param says the same in a sentence
     * @param disposal which record must be kept of its disposal; missing where none need be
     */
    public record Machine(String site, String siteName, String machine, String machineName, String refrigerant,
            BigDecimal charge, List<Rate> rates, Verdict.Outcome outcome, String says, Optional<String> disposal) {

        public Machine {
            rates = List.copyOf(rates);
        }
    }

    /** What was added and recovered of a refrigerant. */
    public record Kind(String refrigerant, BigDecimal added, BigDecimal recovered) {}

    /**
     * A cylinder.
     *
     * @param cylinder as it is marked
     * @param taken out of it within the days
     * @param put into it within the days
     * @param balance what is in it now; missing where nobody wrote down what it held
     */
    public record Cylinder(String cylinder, String refrigerant, BigDecimal taken, BigDecimal put,
            Optional<BigDecimal> balance) {}

    public RefrigerantHistory {
        visits = List.copyOf(visits);
        machines = List.copyOf(machines);
        kinds = List.copyOf(kinds);
        cylinders = List.copyOf(cylinders);
        notes = List.copyOf(notes);
    }
}
