package icequill.document;

import icequill.party.Language;
import icequill.party.PaperSize;
import icequill.party.Shop;
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
 * @param safeFrom when ice may be served again
 * @param nextDue the day by which the next cleaning is due
 */
public record VisitRecord(LocalDate date, Shop shop, Language language, PaperSize size, String customer,
        Attended attended, List<Machine> machines, Optional<ZonedDateTime> safeFrom, Optional<LocalDate> nextDue)
        implements
        Paper {

    /** One machine's part of it. */
    public record Machine(MachineReport report, List<Chemical> chemicals) {
        public Machine {
            chemicals = List.copyOf(chemicals);
        }
    }

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
    }
}
