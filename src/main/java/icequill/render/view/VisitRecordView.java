package icequill.render.view;

import icequill.document.MachineReport;
import icequill.document.VisitRecord;
import icequill.document.VisitRecord.Chemical;
import icequill.explain.ConstantKey;
import icequill.life.refrigerant.Handled;
import icequill.party.Machine;
import icequill.render.page.Page;
import icequill.render.page.Texts;
import icequill.render.words.MachineName;
import icequill.render.words.RefrigerantWords;
import icequill.render.words.Sentences;
import icequill.work.Caution;
import icequill.work.Contradiction;
import icequill.work.Flammability;
import icequill.work.Quantity;
import icequill.work.Unit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** The record of a visit as texts, ready for {@code visit-record.ftlh}. */
public record VisitRecordView(VisitRecord visit, Sentences sentences) {

    private static final String NONE = "–";

    public static Page of(VisitRecord visit) {
        String country = visit.shop().address().country();
        return new VisitRecordView(visit, Sentences.of(visit.language(), country)).page();
    }

    /**
     * What was done.
     *
     * @param ending which ice was thrown away, and next due; may be empty
     */
    record Recorded(List<Details.Row> visitRows, List<MachineRecord> machines, List<Details.Row> ending,
            List<String> cautions)
            implements
            Texts {}

    record MachineRecord(String name, List<Details.Row> rows, List<VisitView.Reading> readings, List<String> remarks,
            List<Used> chemicals)
            implements
            Texts {}

    /** A chemical; a dash for what is not known. */
    record Used(String name, String registration, String dose, String minutes, String ph, String ppm)
            implements
            Texts {}

    private Page page() {
        VisitView view = new VisitView(visit.attended(), List.of(), sentences);
        return Page.of(
                new LetterView(visit, title(), sentences).letter(visit.customer(), visit.attended().site(),
                        visit.attended().address(), facts()),
                new Recorded(view.visitRows(),
                        visit.machines().stream().map(machine -> machine(view, machine)).toList(),
                        ending(view), cautions()));
    }

    /** Its number is the shop's own for the visit. */
    private LetterView.Title title() {
        return new LetterView.Title(sentences.word("record.title"), Optional.of(visit.attended().visit()));
    }

    private List<Details.Row> facts() {
        return new Details(sentences)
                .add("fact.service", sentences.formats().day(visit.attended().arrived().toLocalDate()))
                .add("record.written", sentences.formats().day(visit.date()))
                .add("fact.purchase-order", visit.attended().order().purchaseOrder())
                .add("fact.store", visit.attended().storeNumber()).rows();
    }

    private MachineRecord machine(VisitView view, VisitRecord.Machine machine) {
        MachineReport report = machine.report();
        Details details = new Details(sentences).add("sheet.machine", kind(report.machine()));
        return new MachineRecord(new MachineName(report.machine(), sentences).text(),
                view.reportRows(report, details).add("record.used", used(machine))
                        .add("leak.kind", machine.refrigerant().map(this::refrigerant)).rows(),
                VisitView.readings(report),
                remarks(machine), machine.chemicals().stream().map(this::chemical).toList());
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

    private String refrigerant(Handled handled) {
        return String.join("; ", new RefrigerantWords(sentences).told(handled));
    }

    /** A pH is told to a tenth at least. */
    private String ph(BigDecimal number) {
        return sentences.formats().number(number, Math.max(1, number.stripTrailingZeros().scale()));
    }

    private Used chemical(Chemical chemical) {
        return new Used(Sentences.capitalized(chemical.name()), chemical.registration().orElse(NONE),
                chemical.dose().map(sentences::quantity).orElse(NONE),
                chemical.minutes().map(minutes -> sentences.quantity(new Quantity(minutes, Unit.MINUTE))).orElse(NONE),
                chemical.ph().map(this::ph).orElse(NONE),
                chemical.ppm().map(sentences.formats()::number).orElse(NONE));
    }

    private List<String> remarks(VisitRecord.Machine machine) {
        List<String> remarks = new ArrayList<>(machine.remarks().stream().map(this::remark).toList());
        machine.confirmed().filter(text -> !remarks.isEmpty())
                .ifPresent(text -> remarks.add(sentences.word("record.confirmed", text)));
        return List.copyOf(remarks);
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
        return List.copyOf(cautions);
    }

    /** Where nothing was said of them, there is no line for them. */
    private List<Details.Row> ending(VisitView view) {
        Optional<String> due = visit.nextDue().map(sentences.formats()::day);
        boolean remarks = visit.machines().stream().anyMatch(machine -> !machine.remarks().isEmpty());
        String ice = remarks ? "record.ice-remarks" : "record.ice-thrown";
        return new Details(sentences)
                .add("record.ice", visit.safeFrom().map(moment -> sentences.word(ice, view.moment(moment))))
                .add("record.next-due", due).rows();
    }
}
