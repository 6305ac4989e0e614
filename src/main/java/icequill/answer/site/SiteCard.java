package icequill.answer.site;

import icequill.agreement.CleaningInterval;
import icequill.answer.site.SiteCard.CardMachine.LastVisit;
import icequill.explain.Fact;
import icequill.explain.Phrase;
import icequill.party.AccessHours;
import icequill.party.Address;
import icequill.party.Contact;
import icequill.party.Customer;
import icequill.party.Machine;
import icequill.party.Site;
import icequill.render.words.MachineName;
import icequill.render.words.Sentences;
import icequill.work.Block;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A site at a glance, in the language of the reader.
 *
 * @param customer who pays, by id, and {@code customerName}
 * @param kind of site
 * @param access hours within which a technician is let in
 * @param contacts of the site, then of the customer
 * @param months from one full cleaning to the next, as recommended
 * @param reasons for these months
 * @param nextDue the day by which the next cleaning is due, as the last visit that said so has it
 * @param notes for the shop's own eyes
 * @param ahead what was sold ahead and is not used up
 * @param agreements in force, by number
 */
public record SiteCard(String id, String name, Optional<String> storeNumber, Address address, String kind,
        String customer, String customerName, Optional<String> telephone, List<CardContact> contacts,
        Optional<DoorHours> access, Optional<String> parking, Optional<String> roof, List<CardMachine> machines,
        int months, List<String> reasons,
        Optional<LocalDate> nextDue, Optional<String> notes, List<CardBlock> ahead, List<String> agreements) {

    /**
     * Whom to call.
     *
     * @param purposes what for
     */
    public record CardContact(String name, Optional<String> role, List<Contact.Purpose> purposes,
            Optional<String> telephone, Optional<String> email) {

        private static CardContact of(Contact contact) {
            return new CardContact(contact.name(), contact.role(),
                    contact.purposes().stream().sorted().toList(), contact.telephone(), contact.email());
        }
    }

    /** From one time of day to another, as 08:00. */
    public record DoorHours(String from, String until) {

        private static DoorHours of(AccessHours hours) {
            return new DoorHours(hours.from().toString(), hours.until().toString());
        }
    }

    /**
     * A machine.
     *
     * @param name where it stands, its model and serial number
     * @param harvestRate pounds of ice in 24 hours
     * @param lastVisit the newest at which something was done to it
     */
    public record CardMachine(String id, String name, Machine.Make make, Machine.Form form, Machine.Cooling cooling,
            String harvestRate, Optional<LocalDate> installed, Optional<String> condition,
            Optional<LastVisit> lastVisit) {

        /** A visit, by id. */
        public record LastVisit(String visit, LocalDate day) {}

        private static CardMachine of(Machine machine, Sentences sentences, Optional<LastVisit> last) {
            return new CardMachine(machine.id(), new MachineName(machine, sentences).text(), machine.make(),
                    machine.form(), machine.cooling(), machine.harvestRate().toPlainString(), machine.installed(),
                    machine.condition(), last);
        }
    }

    /**
     * Minutes or visits that were sold ahead.
     *
     * @param sale the visit or sale on whose form they stand, by id
     * @param unit by its symbol
     * @param until the last day on which they can be used
     * @param told all of it in one sentence
     */
    public record CardBlock(String sale, LocalDate sold, int count, BigDecimal left, String unit,
            Optional<LocalDate> until, String told) {

        private static CardBlock of(Block.Held held, Sentences sentences) {
            Block block = held.block();
            String unit = block.of().unit().symbol();
            List<Fact> facts = new ArrayList<>(List.of(new Fact.Text(held.text()), new Fact.Day(held.sold()),
                    new Fact.Measure(held.left(), unit), Fact.number(block.count(), unit)));
            block.until().map(Fact.Day::new).ifPresent(facts::add);
            return new CardBlock(held.sale(), held.sold(), block.count(), held.left(), unit, block.until(),
                    sentences.say(new Phrase(block.until().isPresent() ? "block.left-until" : "block.left", facts)));
        }
    }

    public SiteCard {
        agreements = List.copyOf(agreements);
        ahead = List.copyOf(ahead);
        contacts = List.copyOf(contacts);
        machines = List.copyOf(machines);
        reasons = List.copyOf(reasons);
    }

    /**
     * What is shown of a site.
     *
     * @param customer by id
     * @param lastVisits of machines, by their ids
     * @param ahead what was sold ahead
     * @param agreements in force, by number
     */
    public static SiteCard of(Site site, String customer, CleaningInterval interval, Map<String, LastVisit> lastVisits,
            Optional<LocalDate> nextDue, List<Block.Held> ahead, List<String> agreements, Sentences sentences) {
        Customer payer = site.customer();
        List<Contact> people = new ArrayList<>(site.contacts().people());
        people.addAll(payer.contacts().people());
        return new SiteCard(site.id(), site.name(), site.storeNumber(), site.address(),
                sentences.in(site.kind().name()), customer, payer.name(),
                site.contacts().telephone().or(() -> payer.contacts().telephone()),
                people.stream().distinct().map(CardContact::of).toList(), site.access().map(DoorHours::of),
                site.parking(), site.roof(),
                site.machines().stream().sorted(Comparator.comparing(Machine::where))
                        .map(machine -> CardMachine.of(machine, sentences,
                                Optional.ofNullable(lastVisits.get(machine.id()))))
                        .toList(),
                interval.months(), interval.reasons().stream().map(sentences::say).map(Sentences::capitalized).toList(),
                nextDue, site.notes(),
                ahead.stream().filter(held -> held.left().signum() > 0).map(held -> CardBlock.of(held, sentences))
                        .toList(),
                agreements);
    }
}
