package icequill.document;

import icequill.life.refrigerant.MachineLog;
import icequill.life.refrigerant.RefrigerantLog.OfKind;
import icequill.life.refrigerant.RefrigerantLog.Standing;
import icequill.party.Language;
import icequill.party.Machine;
import icequill.party.PaperSize;
import icequill.party.Shop;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What was added to the machines of a site and recovered from them, to be filed by the customer or shown to an inspector. It holds no prices.
 *
 * @param customer whose site it is
 * @param from the first day; empty for as long as there is anything
 * @param until the last day; empty for up to now
 * @param machines of which anything is told
 */
public record RefrigerantRecord(LocalDate date, Shop shop, Language language, PaperSize size, String customer,
        Where where, Optional<LocalDate> from, Optional<LocalDate> until, List<OfMachine> machines,
        List<OfKind> kinds) implements Paper {

    /**
     * A machine's part of it.
     *
     * @param entries by day, at least one
     */
    public record OfMachine(Machine machine, List<MachineLog.Entry> entries, Standing standing) {

        public OfMachine {
            entries = List.copyOf(entries);
        }
    }

    public RefrigerantRecord {
        machines = List.copyOf(machines);
        kinds = List.copyOf(kinds);
    }
}
