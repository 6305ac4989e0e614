package icequill.party;

import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.Month;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Where machines stand.
 *
 * @param id the name of its file
 * @param accounts the customer's id in the book, then those of the accounts above him; none where he is only a form
 * @param storeNumber the customer's own number for the site
 * @param miles one way from the shop, exact
 * @param taxPlace as the tax rules name it; without one, nothing here can be taxed
 * @param conditions that bear on how often its machines should be cleaned
 * @param season the months it is open; empty for the whole year
 * @param closed the days of the week on which nobody is let in
 * @param roof how to reach what stands on the roof; empty if nothing does
 * @param circumstances for which planned visits are charged more
 * @param notes for the shop's own eyes
 */
public record Site(String id, Customer customer, List<String> accounts, String name, Optional<String> storeNumber,
        Address address,
        SiteKind kind,
        Conditions conditions, BigDecimal miles, Optional<String> taxPlace, Optional<AccessHours> access,
        Set<Month> season, Set<DayOfWeek> closed,
        Optional<String> parking, Optional<String> roof, List<Machine> machines, Layout layout,
        List<Circumstance> circumstances, Contacts contacts, Optional<String> notes) {

    public Site {
        accounts = List.copyOf(accounts);
        season = Set.copyOf(season);
        closed = Set.copyOf(closed);
        machines = List.copyOf(machines);
        circumstances = List.copyOf(circumstances);
    }

    public Optional<Machine> machine(String machineId) {
        return machines.stream().filter(machine -> machine.id().equals(machineId)).findFirst();
    }

    /** Whether it is open on a day: in its season, and on a day of the week on which somebody is let in. */
    public boolean isOpen(LocalDate day) {
        return (season.isEmpty() || season.contains(day.getMonth())) && !closed.contains(day.getDayOfWeek());
    }

    /** The same site with only some of its machines, in the site's order. */
    public Site only(Set<String> ids) {
        return new Site(id, customer, accounts, name, storeNumber, address, kind, conditions, miles, taxPlace, access,
                season, closed,
                parking, roof, machines.stream().filter(machine -> ids.contains(machine.id())).toList(),
                layout, circumstances, contacts, notes);
    }

    /** The same, known to belong to accounts. */
    public Site of(List<String> others) {
        return new Site(id, customer, others, name, storeNumber, address, kind, conditions, miles, taxPlace, access,
                season, closed, parking, roof, machines, layout, circumstances, contacts, notes);
    }

    /** Whom to turn to for something: there, or else at the customer's. */
    public Optional<Contact> contactFor(Contact.Purpose purpose) {
        return contacts.of(purpose).or(() -> customer.contacts().of(purpose));
    }

    /** Who is billed for it on a day; bills that nobody is named for go to its contact for bills, else to the customer's. */
    public Validated<BillTo> billTo(LocalDate day) {
        return customer.billTo().at(day).map(payer -> payer.attended(contactFor(Contact.Purpose.BILLS)))
                .map(Validated::valid)
                .orElseGet(() -> Validated.invalid(new Problem(Code.MISSING, Place.ofFile("sites/" + id + ".yaml"),
                        "nobody is billed on " + day, "a billTo entry that covers the day")));
    }
}
