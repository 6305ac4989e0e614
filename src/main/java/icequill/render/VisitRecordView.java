package icequill.render;

import icequill.document.VisitRecord;
import icequill.document.VisitRecord.Chemical;
import icequill.work.Quantity;
import icequill.work.Unit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The record of a visit as texts, ready for {@code visit-record.ftlh}. */
record VisitRecordView(VisitRecord visit, Sentences sentences) {

    private static final String NONE = "–";

    static Map<String, Object> of(VisitRecord visit) {
        String country = visit.shop().address().country();
        return new VisitRecordView(visit, Sentences.of(visit.language(), country)).model();
    }

    private Map<String, Object> model() {
        Map<String, Object> model = new LinkedHashMap<>(
                new LetterView(visit, sentences.word("record.title"), sentences).model(visit.customer(),
                        visit.attended().site(), visit.attended().address(), facts()));
        VisitView view = new VisitView(visit.attended(), List.of(), sentences);
        model.put("visitRows", view.visitRows());
        model.put("machines", visit.machines().stream().map(machine -> machine(view, machine)).toList());
        model.put("ending", ending(view));
        return model;
    }

    private List<Map<String, String>> facts() {
        return new Details(sentences).add("record.visit", visit.attended().visit())
                .add("fact.service", sentences.formats().day(visit.attended().arrived().toLocalDate()))
                .add("record.written", sentences.formats().day(visit.date()))
                .add("fact.purchase-order", visit.attended().order().purchaseOrder())
                .add("fact.store", visit.attended().storeNumber()).rows();
    }

    private Map<String, Object> machine(VisitView view, VisitRecord.Machine machine) {
        Map<String, Object> model = new LinkedHashMap<>(view.machine(machine.report()));
        model.put("chemicals", machine.chemicals().stream().map(this::chemical).toList());
        return model;
    }

    private Map<String, String> chemical(Chemical chemical) {
        return Map.of("name", Sentences.capitalized(chemical.name()), "registration",
                chemical.registration().map(number -> sentences.word("record.registration", number)).orElse(""),
                "dose", chemical.dose().map(sentences::quantity).orElse(NONE), "minutes",
                chemical.minutes().map(minutes -> sentences.quantity(new Quantity(minutes, Unit.MINUTE))).orElse(NONE),
                "ph", chemical.ph().map(sentences.formats()::number).orElse(NONE), "ppm",
                chemical.ppm().map(sentences.formats()::number).orElse(NONE));
    }

    /** Safe from and next due; where nothing was said of them, there is no line for them. */
    private List<Map<String, String>> ending(VisitView view) {
        Optional<String> due = visit.nextDue().map(sentences.formats()::day);
        return new Details(sentences).add("record.safe-from", visit.safeFrom().map(view::moment))
                .add("record.next-due", due).rows();
    }
}
