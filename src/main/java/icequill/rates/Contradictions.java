package icequill.rates;

import icequill.party.Language;
import icequill.party.Layout;
import icequill.party.Machine;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.work.ChemicalOrder;
import icequill.work.Contradiction;
import icequill.work.Contradiction.Kind;
import icequill.work.Finding;
import icequill.work.Finding.ChemicalUse;
import icequill.work.Procedure;
import icequill.work.Task;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Holds what was written down of the chemicals at a machine against labels, limits and the rule that keeps some apart.
 *
 * @param layout of the site, which may give the machine other minutes of circulation
 */
public record Contradictions(Finding finding, Machine machine, Layout layout, Rates rates) {

    /** A contradiction, and where it was written. */
    public record Noted(Contradiction what, Place place) {

        public Problem problem() {
            return new Problem(Code.NOT_ALLOWED, place, what.chemical().in(Language.ENGLISH) + ": " + message(),
                    "the right reading; or, if it is right, \"confirmed\" at the machine with what was done about it");
        }

        private String message() {
            String found = what.found().toPlainString();
            String limit = what.limit().toPlainString();
            return switch (what.kind()) {
            case STILL_ACID -> "pH " + found + " after flushing is still acid, under " + limit;
            case STRIP_TOO_STRONG ->
                "a strip of " + found + " ppm is above the " + limit + " ppm that may stay unrinsed";
            case DOSE_ABOVE_LABEL -> found + " " + what.unit().symbol() + " is above the label's " + limit;
            case TOO_SHORT -> found + " minutes is under the least, " + limit;
            case TOO_LONG -> found + " minutes is above the most, " + limit;
            case NOT_KEPT_APART -> "chlorine met what makes a poisonous gas of it without " + limit
                    + " full flushes and a pH reading between them";
            };
        }
    }

    /** All of them, in the order in which they were written down. */
    public List<Noted> found() {
        List<Noted> all = new ArrayList<>();
        finding.chemicals().forEach(use -> material(use).ifPresent(material -> use(use, material, all)));
        apart(all);
        return all;
    }

    /** A dose that was written down, but cannot be held against its label. */
    public List<Problem> unknown() {
        return finding.chemicals().stream().filter(use -> use.dose().isPresent() && water(use).isEmpty())
                .filter(use -> material(use).flatMap(Material::label).isPresent())
                .map(use -> new Problem(Code.MISSING, use.place(),
                        "the dose of " + use.material() + " does not say how much water it went into",
                        "water, in " + material(use).flatMap(Material::label).orElseThrow().per().symbol()))
                .toList();
    }

    private Optional<Material> material(ChemicalUse use) {
        return rates.material(use.material());
    }

    private void use(ChemicalUse use, Material material, List<Noted> all) {
        use.ph().filter(ph -> ph.compareTo(Contradiction.CLEAN_PH) < 0)
                .ifPresent(ph -> add(all, use, Kind.STILL_ACID, ph, Contradiction.CLEAN_PH));
        material.label().ifPresent(label -> {
            use.ppm().ifPresent(ppm -> label.strip().filter(most -> ppm.compareTo(most) > 0)
                    .ifPresent(most -> add(all, use, Kind.STRIP_TOO_STRONG, ppm, most)));
            dose(use).ifPresent(dose -> water(use).map(label::most).filter(most -> dose.compareTo(most) > 0)
                    .ifPresent(most -> add(all, use, Kind.DOSE_ABOVE_LABEL, dose, most)));
            use.minutes().ifPresent(minutes -> time(use, minutes, label.minutes(), all));
        });
    }

    private void time(ChemicalUse use, BigDecimal minutes, Label.Minutes label, List<Noted> all) {
        Optional<Procedure.Timer> timer = timer(use);
        int least = Math.max(label.least(), timer.map(Procedure.Timer::least).orElse(0));
        Optional<Integer> most = Stream.concat(label.most().stream(), timer.map(Procedure.Timer::most).stream())
                .min(Comparator.naturalOrder());
        if (minutes.compareTo(BigDecimal.valueOf(least)) < 0) {
            add(all, use, Kind.TOO_SHORT, minutes, BigDecimal.valueOf(least));
        }
        most.map(BigDecimal::valueOf).filter(limit -> minutes.compareTo(limit) > 0)
                .ifPresent(limit -> add(all, use, Kind.TOO_LONG, minutes, limit));
    }

    /** The site's own minutes for the machine come before those of the task. */
    private Optional<Procedure.Timer> timer(ChemicalUse use) {
        Optional<Procedure.Timer> own = layout.circulations().stream()
                .filter(each -> each.machine().equals(machine.id())).findFirst()
                .map(each -> new Procedure.Timer(each.least(), each.most()));
        return dosing(use).flatMap(task -> task.procedure().timer()).map(usual -> own.orElse(usual));
    }

    private Optional<Task> dosing(ChemicalUse use) {
        return rates.done(finding).stream()
                .filter(task -> task.doses().stream().anyMatch(dose -> dose.material().equals(use.material())))
                .findFirst();
    }

    private Optional<Task.Step> step(ChemicalUse use) {
        return dosing(use).flatMap(task -> task.doses().stream()
                .filter(dose -> dose.material().equals(use.material())).findFirst())
                .flatMap(dose -> dose.step(machine.harvestRate()));
    }

    private Optional<BigDecimal> dose(ChemicalUse use) {
        return use.dose().or(() -> step(use).map(Task.Step::quantity));
    }

    private Optional<BigDecimal> water(ChemicalUse use) {
        return use.water().or(() -> step(use).flatMap(Task.Step::water));
    }

    private void add(List<Noted> all, ChemicalUse use, Kind kind, BigDecimal found, BigDecimal limit) {
        Material material = material(use).orElseThrow();
        all.add(new Noted(new Contradiction(kind, material.name(), found, limit, material.unit()), use.place()));
    }

    private void apart(List<Noted> all) {
        new KeptApart(finding, rates).broken().ifPresent(chlorine -> all.add(new Noted(
                new Contradiction(Kind.NOT_KEPT_APART, chlorine.name(), BigDecimal.ZERO,
                        BigDecimal.valueOf(ChemicalOrder.FLUSHES), chlorine.unit()),
                finding.place())));
    }
}
