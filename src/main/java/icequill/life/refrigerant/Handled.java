package icequill.life.refrigerant;

import icequill.party.Machine;
import icequill.party.Site;
import icequill.rates.Rates;
import icequill.rates.RefrigerantNotes;
import icequill.rates.RefrigerantRules.Kind;
import icequill.work.Finding;
import icequill.work.RefrigerantWork;
import icequill.work.RefrigerantWork.LeakTest;
import icequill.work.RefrigerantWork.Moved;
import icequill.work.RefrigerantWork.Purpose;
import icequill.work.TechnicianCertificate;
import icequill.work.Visit;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What a visit did with the refrigerant of a machine. All weights are ounces.
 *
 * @param visit by id
 * @param site by id
 * @param machine by id
 * @param kind as the shop's table names it, or as it was written down
 * @param charge of the machine when it is full
 * @param added zero where nothing was
 * @param from the cylinder
 * @param recovered zero where nothing was
 * @param into the cylinder
 * @param certificates of the technician
 */
public record Handled(String visit, LocalDate day, String site, String machine, String kind, BigDecimal charge,
        BigDecimal added, Optional<String> from, BigDecimal recovered, Optional<String> into, Purpose purpose,
        Optional<String> technician, List<TechnicianCertificate> certificates, Optional<String> leak,
        Optional<String> repair, Optional<LeakTest> test) {

    public Handled {
        certificates = List.copyOf(certificates);
    }

    /**
     * What a finding says of it; empty where it says nothing, or where what kind or how much a machine holds is not on record.
     *
     * @param rates of the day of the visit
     */
    public static Optional<Handled> of(Visit visit, Finding finding, Site site, Rates rates) {
        return finding.refrigerant().flatMap(work -> site.machine(finding.machine())
                .flatMap(machine -> of(visit, work, machine, rates)));
    }

    private static Optional<Handled> of(Visit visit, RefrigerantWork work, Machine machine, Rates rates) {
        RefrigerantNotes notes = new RefrigerantNotes(work, machine, visit.people(), rates);
        return work.kind().or(machine::refrigerant).flatMap(name -> work.chargeOunces(machine.chargeOunces())
                .map(charge -> new Handled(visit.id(), visit.day(), visit.site(), machine.id(),
                        rates.refrigerants().kind(name).map(Kind::name).orElse(name), charge, work.addedOunces(),
                        work.added().flatMap(Moved::cylinder), work.recoveredOunces(),
                        work.recovered().flatMap(Moved::cylinder), work.purpose(), work.technician(),
                        work.technician().map(notes::certificates).orElse(List.of()), work.leak(), work.repair(),
                        work.test())));
    }

    /** Whether a test after the machine ran again found that all leaks are mended. */
    boolean provesTight() {
        return test.filter(done -> done.when() == LeakTest.When.FOLLOW_UP && done.tight()).isPresent();
    }
}
