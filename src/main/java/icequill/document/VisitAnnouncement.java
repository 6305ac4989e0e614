package icequill.document;

import icequill.party.AccessHours;
import icequill.party.Contact;
import icequill.party.Language;
import icequill.party.Machine;
import icequill.party.PaperSize;
import icequill.party.Shop;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;

/**
 * Tells a customer of a visit to come, and what to prepare for it. It holds no prices.
 *
 * @param customer whose site it is
 * @param visit the shop's reference
 * @param people who come, by name
 * @param symptom why it was asked for; empty of planned care
 * @param agreement under which it is made, by number
 * @param access hours in which the site lets somebody in
 * @param letsIn whom the shop has on record for that
 */
public record VisitAnnouncement(LocalDate date, Shop shop, Language language, PaperSize size, String customer,
        Where where, String visit, ZonedDateTime begins, ZonedDateTime ends, List<String> people,
        List<OfMachine> machines, Optional<String> symptom, Optional<String> purchaseOrder,
        Optional<String> agreement, Optional<AccessHours> access, Optional<Contact> letsIn) implements Paper {

    /**
     * What is to be done at a machine.
     *
     * @param tasks in the paper's language
     * @param stopsIce whether it makes no ice meanwhile
     * @param reachesIce whether hands reach where its ice lies, so that it must be out
     */
    public record OfMachine(Machine machine, List<String> tasks, boolean stopsIce, boolean reachesIce) {

        public OfMachine {
            tasks = List.copyOf(tasks);
        }
    }

    public VisitAnnouncement {
        people = List.copyOf(people);
        machines = List.copyOf(machines);
    }
}
