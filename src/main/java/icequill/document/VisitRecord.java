package icequill.document;

import icequill.life.refrigerant.Handled;
import icequill.party.Language;
import icequill.party.PaperSize;
import icequill.party.Shop;
import icequill.work.Caution;
import icequill.work.Contradiction;
import icequill.work.Quantity;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;

/**
 * What was found and done on a visit, to be shown to a health inspector. It holds no prices.
 *
 * @param customer whose site it is
 * @param safeFrom before when all ice that was made was thrown away
 * @param nextDue the day by which the next cleaning is due
 * @param cautions for the customer's people
 */
public record VisitRecord(LocalDate date, Shop shop, Language language, PaperSize size, String customer,
        VisitSummary attended, List<Machine> machines, Optional<ZonedDateTime> safeFrom, Optional<LocalDate> nextDue,
        List<Caution> cautions)
        implements
        Paper {

    /**
     * One machine's part of it.
     *
     * @param used filters and parts that were put in
     * @param refrigerant what was done with it; empty where nothing was
     * @param remarks what labels and limits contradict
     * @param confirmed that the readings are right all the same, and what was done about it
     */
    public record Machine(MachineReport report, List<Chemical> chemicals, List<Used> used,
            Optional<Handled> refrigerant,
            List<Contradiction> remarks, Optional<String> confirmed) {
        public Machine {
            chemicals = List.copyOf(chemicals);
            used = List.copyOf(used);
            remarks = List.copyOf(remarks);
        }
    }

    /** A filter or part, named in the paper's language. */
    public record Used(String name, Quantity quantity) {}

    /**
     * A cleaner or sanitizer that was used.
     *
     * @param name in the paper's language
     * @param registration number on the label of a registered sanitizer
     * @param minutes it was left to work
     * @param ph measured after flushing
     * @param ppm on the test strip
     */
    public record Chemical(String name, Optional<String> registration, Optional<Quantity> dose,
            Optional<BigDecimal> minutes, Optional<BigDecimal> ph, Optional<BigDecimal> ppm) {}

    public VisitRecord {
        machines = List.copyOf(machines);
        cautions = List.copyOf(cautions);
    }
}
