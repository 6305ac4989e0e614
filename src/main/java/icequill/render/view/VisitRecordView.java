package icequill.render.view;

import icequill.document.VisitRecord;
import icequill.document.VisitRecord.Chemical;
import icequill.explain.ConstantKey;
import icequill.party.Machine;
import icequill.render.words.MachineName;
import icequill.render.words.Sentences;
import icequill.work.Caution;
import icequill.work.Contradiction;
import icequill.work.Flammability;
import icequill.work.Quantity;
import icequill.work.Unit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** The record of a visit as texts, ready for {@code visit-record.ftlh}. */
public record VisitRecordView(VisitRecord visit, Sentences sentences) {

    private static final String NONE = "–";

    public static Map<String, Object> of(VisitRecord visit) {
        String country = visit.shop().address().country();
        return new VisitRecordView(visit, Sentences.of(visit.language(), country)).model();
    }

    private Map<String, Object> model() {
        Map<String, Object> model = new LinkedHashMap<>(
                new LetterView(visit, title(), sentences).model(visit.customer(),
                        visit.attended().site(), visit.attended().address(), facts()));
        VisitView view = new VisitView(visit.attended(), List.of(), sentences);
        model.put("visitRows", view.visitRows());
        model.put("machines", visit.machines().stream().map(machine -> machine(view, machine)).toList());
        model.put("ending", ending(view));
        model.put("cautions", cautions());
        return model;
    }

    /** Its number is the shop's own for the visit. */
    private Title title() {
        return new Title(sentences.word("record.title"), Optional.of(visit.attended().visit()));
    }

    private List<Map<String, String>> facts() {
        return new Details(sentences)
                .add("fact.service", sentences.formats().day(visit.attended().arrived().toLocalDate()))
                .add("record.written", sentences.formats().day(visit.date()))
                .add("fact.purchase-order", visit.attended().order().purchaseOrder())
                .add("fact.store", visit.attended().storeNumber()).rows();
    }

    private Map<String, Object> machine(VisitView view, VisitRecord.Machine machine) {
        Map<String, Object> model = new LinkedHashMap<>(view.machine(machine.report()));
        Details details = new Details(sentences).add("sheet.machine", kind(machine.report().machine()));
        view.reportRows(machine.report(), details);
        model.put("rows", details.add("record.used", used(machine)).rows());
        model.put("remarks", remarks(machine));
        model.put("chemicals", machine.chemicals().stream().map(this::chemical).toList());
        return model;
    }

    private String kind(Machine machine) {
        return String.join(", ", sentences.word("make." + ConstantKey.of(machine.make())),
                sentences.word("cooling." + ConstantKey.of(machine.cooling())),
                sentences.word("record.rate", sentences.formats().number(machine.harvestRate())));
    }

    private Optional<String> used(VisitRecord.Machine machine) {
        return machine.used().stream()
                .map(part -> Sentences.capitalized(part.name()) + ", " + sentences.quantity(part.quantity()))
                .reduce((one, other) -> one + "; " + other);
    }

    /** A pH is told to a tenth at least. */
    private String ph(BigDecimal number) {
        return sentences.formats().number(number, Math.max(1, number.stripTrailingZeros().scale()));
    }

    private Map<String, String> chemical(Chemical chemical) {
        return Map.of("name", Sentences.capitalized(chemical.name()), "registration",
                chemical.registration().orElse(NONE),
                "dose", chemical.dose().map(sentences::quantity).orElse(NONE), "minutes",
                chemical.minutes().map(minutes -> sentences.quantity(new Quantity(minutes, Unit.MINUTE))).orElse(NONE),
                "ph", chemical.ph().map(this::ph).orElse(NONE), "ppm",
                chemical.ppm().map(sentences.formats()::number).orElse(NONE));
    }

    private List<String> remarks(VisitRecord.Machine machine) {
        List<String> remarks = new ArrayList<>(machine.remarks().stream().map(this::remark).toList());
        machine.confirmed().filter(text -> !remarks.isEmpty())
                .ifPresent(text -> remarks.add(sentences.word("record.confirmed", text)));
        return remarks;
    }

    private String remark(Contradiction remark) {
        boolean dose = remark.kind() == Contradiction.Kind.DOSE_ABOVE_LABEL;
        return sentences.word("record." + ConstantKey.of(remark.kind()),
                Sentences.capitalized(remark.chemical().in(visit.language())),
                figure(remark.found(), remark.unit(), dose),
                figure(remark.limit(), remark.unit(), dose));
    }

    private String figure(BigDecimal number, Unit unit, boolean dose) {
        return dose ? sentences.quantity(new Quantity(number, unit)) : sentences.formats().number(number);
    }

    /** What the customer's people must know of machines that are on the record. */
    private List<String> cautions() {
        List<String> cautions = new ArrayList<>(
                visit.cautions().stream().map(new CautionWords(sentences)::full).toList());
        if (visit.cautions().contains(Caution.GAS_SUSPECTED)) {
            cautions.add(sentences.word("record.gas-machines", visit.machines().stream()
                    .map(machine -> machine.report().machine())
                    .filter(machine -> Flammability.of(machine.refrigerant()).mayBurn())
                    .map(machine -> new MachineName(machine, sentences).text()).collect(Collectors.joining("; "))));
        }
        return cautions;
    }

    /** Which ice was thrown away, and next due; where nothing was said of them, there is no line for them. */
    private List<Map<String, String>> ending(VisitView view) {
        Optional<String> due = visit.nextDue().map(sentences.formats()::day);
        boolean remarks = visit.machines().stream().anyMatch(machine -> !machine.remarks().isEmpty());
        String ice = remarks ? "record.ice-remarks" : "record.ice-thrown";
        return new Details(sentences)
                .add("record.ice", visit.safeFrom().map(moment -> sentences.word(ice, view.moment(moment))))
                .add("record.next-due", due).rows();
    }
}
