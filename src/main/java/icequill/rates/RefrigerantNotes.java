package icequill.rates;

import icequill.party.Machine;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.rates.RefrigerantRules.Kind;
import icequill.work.Attendance;
import icequill.work.RefrigerantWork;
import icequill.work.RefrigerantWork.Moved;
import icequill.work.RefrigerantWork.Purpose;
import icequill.work.TechnicianCertificate;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Holds what was written down of a machine's refrigerant against what is known of it, of cylinders and of who may handle it.
 *
 * @param people of the visit
 */
public record RefrigerantNotes(RefrigerantWork work, Machine machine, List<Attendance> people, Rates rates) {

    /** A machine with so many ounces or less is a small appliance if a factory charged and sealed it (40 CFR 82.152, from memory). */
    private static final BigDecimal SMALL = RefrigerantWork.ouncesOf(BigDecimal.valueOf(5));
    private static final String WEIGHTS = "the right weights, if these are not";

    public RefrigerantNotes {
        people = List.copyOf(people);
    }

    /** All that keeps it from being recorded. */
    public Problems problems() {
        Problems problems = new Problems();
        if (work.added().isEmpty() && work.recovered().isEmpty() && work.leak().isEmpty()
                && work.test().isEmpty()) {
            problems.add(Code.MISSING, work.place(), "nothing is said of what was done with the refrigerant",
                    "added, recovered, leak or test");
        }
        Optional<String> name = work.kind().or(machine::refrigerant);
        if (name.isEmpty()) {
            problems.add(Code.MISSING, at("kind"), "which refrigerant machine \"" + machine.id()
                    + "\" holds is not on record", "kind, as its nameplate has it; or refrigerant at the machine");
        }
        Optional<Kind> kind = name.flatMap(rates.refrigerants()::kind);
        if (name.isPresent() && kind.isEmpty() && !rates.refrigerants().kinds().isEmpty()) {
            problems.add(Problem.unknownName(at("kind"), "refrigerant in pricing/refrigerants.yaml", name.get(),
                    rates.refrigerants().kinds().stream().map(Kind::name).toList()));
        }
        Optional<BigDecimal> charge = work.chargeOunces(machine.chargeOunces());
        if (charge.isEmpty()) {
            problems.add(Code.MISSING, at("charge"), "the full charge of machine \"" + machine.id()
                    + "\" is not on record", "charge, from its nameplate; or chargeOunces at the machine");
        }
        if (work.purpose() == Purpose.DISPOSAL && work.added().isPresent()) {
            problems.add(Code.NOT_ALLOWED, at("added"), "refrigerant is added to a machine that is disposed of",
                    "recovered alone, or another purpose");
        }
        cylinders(name, problems);
        technician(kind, charge, problems);
        return problems;
    }

    private Place at(String key) {
        return new Place(work.place().file(), work.place().line(), work.place().path() + "." + key);
    }

    private void cylinders(Optional<String> kind, Problems problems) {
        for (Moved moved : moved()) {
            moved.cylinder().flatMap(rates.refrigerants()::cylinder)
                    .filter(cylinder -> kind.filter(name -> !RefrigerantRules.isSame(cylinder.kind(), name))
                            .isPresent())
                    .ifPresent(cylinder -> problems.add(Code.NOT_ALLOWED, work.place(), "cylinder \"" + cylinder.name()
                            + "\" holds " + cylinder.kind() + ", the machine " + kind.orElseThrow(),
                            "a cylinder of the same refrigerant: what is mixed cannot be used again"));
        }
    }

    private List<Moved> moved() {
        List<Moved> moved = new ArrayList<>();
        work.added().ifPresent(moved::add);
        work.recovered().ifPresent(moved::add);
        return moved;
    }

    private void technician(Optional<Kind> kind, Optional<BigDecimal> charge, Problems problems) {
        Place place = at("technician");
        if (work.technician().isEmpty()) {
            if (!moved().isEmpty()) {
                problems.add(Code.MISSING, place, "who added or recovered refrigerant is missing",
                        "technician, whose certificate stands under certificates in pricing/labor.yaml");
            }
            return;
        }
        String name = work.technician().get();
        List<String> names = people.stream().map(Attendance::person).toList();
        if (people.stream().noneMatch(person -> person.isCalled(name))) {
            problems.add(Problem.unknownName(place, "person on the visit", name, names));
        }
        List<TechnicianCertificate> held = certificates(name);
        if (held.isEmpty()) {
            problems.add(Code.NOT_QUALIFIED, place, name + " has no certificate for refrigerant on record",
                    "somebody who has; or his, under certificates in pricing/labor.yaml");
        } else if (kind.isPresent() && charge.isPresent()) {
            TechnicianCertificate.Type needed = needed(kind.get(), charge.get());
            if (held.stream().noneMatch(certificate -> certificate.covers(needed))) {
                problems.add(Code.NOT_QUALIFIED, place, "the certificate of " + name
                        + " does not hold for this machine", told(needed) + " or Universal (40 CFR 82.161)");
            }
        }
    }

    /** What somebody has on record. */
    public List<TechnicianCertificate> certificates(String name) {
        return rates.labor().crew().certificates().stream().filter(certificate -> certificate.isOf(name)).toList();
    }

    private TechnicianCertificate.Type needed(Kind kind, BigDecimal charge) {
        if (kind.lowPressure()) {
            return TechnicianCertificate.Type.TYPE_III;
        }
        return machine.form() != Machine.Form.REMOTE && charge.compareTo(SMALL) <= 0
                ? TechnicianCertificate.Type.TYPE_I
                : TechnicianCertificate.Type.TYPE_II;
    }

    private static String told(TechnicianCertificate.Type type) {
        return switch (type) {
        case TYPE_I -> "Type I";
        case TYPE_II -> "Type II";
        case TYPE_III -> "Type III";
        case UNIVERSAL -> "Universal";
        };
    }

    /** What does not keep it from being recorded, but looks like a slip of the pen. */
    public List<Problem> doubts() {
        Problems doubts = new Problems();
        work.chargeOunces(machine.chargeOunces()).ifPresent(charge -> {
            String full = charge.toPlainString();
            if (work.recoveredOunces().compareTo(charge) > 0) {
                doubts.add(Code.OUT_OF_RANGE, work.place(), work.recoveredOunces().toPlainString()
                        + " oz recovered is more than the full charge of " + full + " oz", WEIGHTS);
            }
            if (work.addedOunces().compareTo(charge) > 0) {
                doubts.add(Code.OUT_OF_RANGE, work.place(), work.addedOunces().toPlainString()
                        + " oz added is more than the full charge of " + full + " oz", WEIGHTS);
            }
        });
        work.kind().filter(name -> machine.refrigerant().filter(own -> !RefrigerantRules.isSame(own, name)).isPresent())
                .ifPresent(name -> doubts.add(Code.NOT_ALLOWED, work.place(), name + " was handled, but the machine is"
                        + " on record with " + machine.refrigerant().orElseThrow(),
                        "the right refrigerant, here or at the machine"));
        return doubts.list();
    }
}
