package icequill.papers;

import icequill.document.VisitRecord;
import icequill.document.VisitRecord.Chemical;
import icequill.life.refrigerant.Handled;
import icequill.party.Language;
import icequill.party.Machine;
import icequill.rates.Contradictions;
import icequill.rates.Material;
import icequill.visits.VisitContext;
import icequill.visits.VisitReport;
import icequill.work.Caution;
import icequill.work.ChargeClass;
import icequill.work.Finding;
import icequill.work.Finding.ChemicalUse;
import icequill.work.Hazard;
import icequill.work.Hazards;
import icequill.work.Quantity;
import icequill.work.SafetyPaper;
import icequill.work.Task;
import icequill.work.VisitLine;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Puts the record of a visit together: everything about it but what it costs. */
public record RecordAssembly(VisitContext hand, Language language) {

    private static final Set<ChargeClass> PUT_IN = Set.of(ChargeClass.FILTERS, ChargeClass.PARTS);

    public VisitRecord record(LocalDate date) {
        return new VisitRecord(date, hand.shop(), language, hand.shop().paper(), hand.site().customer().name(),
                report().attendedWithoutLimit(), hand.visit().findings().stream().map(this::machine).toList(),
                hand.visit().handover().safeFrom(), hand.visit().handover().nextDue(), cautions());
    }

    private List<Caution> cautions() {
        Set<Hazard> hazards = EnumSet.noneOf(Hazard.class);
        hand.visit().findings().forEach(finding -> hazards
                .addAll(Hazards.of(hand.site(), hand.site().machine(finding.machine()).orElseThrow())));
        return List.copyOf(Hazard.cautions(SafetyPaper.VISIT_RECORD, hazards));
    }

    private VisitReport report() {
        return new VisitReport(hand.site(), hand.visit(), hand.rates(), language);
    }

    private VisitRecord.Machine machine(Finding finding) {
        return new VisitRecord.Machine(report().machine(finding), chemicals(finding), used(finding),
                Handled.of(hand.visit(), finding, hand.site(), hand.rates()),
                hand.contradictions(finding).found().stream().map(Contradictions.Noted::what).toList(),
                finding.confirmed());
    }

    private List<VisitRecord.Used> used(Finding finding) {
        return hand.visit().lines().stream().filter(line -> line.outcome().isDone()
                && line.machine().equals(Optional.of(finding.machine())))
                .flatMap(line -> switch (line) {
                case VisitLine.MaterialUsed used -> used(used);
                case VisitLine.Own own when own.isPutIn() -> Stream
                        .of(new VisitRecord.Used(own.text(), own.quantity()));
                case VisitLine.Own own -> Stream.empty();
                case VisitLine.ModifierApplied applied -> Stream.empty();
                }).toList();
    }

    private Stream<VisitRecord.Used> used(VisitLine.MaterialUsed line) {
        Material material = hand.rates().material(line.material()).orElseThrow();
        return PUT_IN.contains(material.chargeClass())
                ? Stream.of(new VisitRecord.Used(material.name().in(language),
                        new Quantity(line.quantity(), material.unit())))
                : Stream.empty();
    }

    /** Those that were written down, and those that only the doses of the tasks tell of. */
    private List<Chemical> chemicals(Finding finding) {
        List<String> noted = finding.chemicals().stream().map(ChemicalUse::material).toList();
        Stream<Chemical> dosed = doses(finding).filter(dose -> !noted.contains(dose.material()))
                .map(dose -> chemical(new ChemicalUse(dose.material(), Optional.empty(), Optional.empty(),
                        Optional.empty(), Optional.empty(), Optional.empty(), dose.place()), finding));
        return Stream.concat(dosed, finding.chemicals().stream().map(use -> chemical(use, finding))).toList();
    }

    private Chemical chemical(ChemicalUse use, Finding finding) {
        Material material = hand.rates().material(use.material()).orElseThrow();
        Optional<BigDecimal> dose = use.dose().or(() -> dose(use.material(), finding));
        return new Chemical(material.name().in(language), material.registration(),
                dose.map(amount -> new Quantity(amount, material.unit())), use.minutes(), use.ph(), use.ppm());
    }

    private Optional<BigDecimal> dose(String material, Finding finding) {
        Machine machine = hand.site().machine(finding.machine()).orElseThrow();
        return doses(finding).filter(dose -> dose.material().equals(material)).findFirst()
                .flatMap(dose -> dose.quantity(machine.harvestRate()));
    }

    private Stream<Task.Dose> doses(Finding finding) {
        return report().done(finding).stream().flatMap(task -> task.doses().stream());
    }
}
