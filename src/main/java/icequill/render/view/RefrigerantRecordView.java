package icequill.render.view;

import icequill.document.RefrigerantRecord;
import icequill.document.RefrigerantRecord.OfMachine;
import icequill.life.refrigerant.Handled;
import icequill.life.refrigerant.MachineLog;
import icequill.life.refrigerant.RefrigerantLog.OfKind;
import icequill.render.page.Page;
import icequill.render.page.Texts;
import icequill.render.words.MachineName;
import icequill.render.words.RefrigerantWords;
import icequill.render.words.Sentences;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** A record of refrigerant as texts, ready for {@code refrigerant-record.ftlh}. */
public record RefrigerantRecordView(RefrigerantRecord paper, Sentences sentences) {

    public static Page of(RefrigerantRecord paper) {
        return new RefrigerantRecordView(paper, Sentences.of(paper.language(), paper.shop().address().country()))
                .page();
    }

    /**
     * The log.
     *
     * @param machines none where nothing was added or recovered
     * @param sums of each refrigerant
     */
    record Logged(List<Machine> machines, List<String> sums) implements Texts {}

    /**
     * A machine.
     *
     * @param says what the rules ask for
     * @param rates how its leak rates were figured; none where it lost nothing
     * @param disposal which record must be kept; may be empty
     */
    record Machine(String name, String holds, List<Visit> visits, String says, List<String> rates, String disposal)
            implements
            Texts {}

    /** What a visit did; each but the day and the visit may be empty. */
    record Visit(String day, String visit, String added, String recovered, String technician, String leak)
            implements
            Texts {}

    private Page page() {
        List<Details.Row> facts = new Details(sentences).add("record.written", sentences.formats().day(paper.date()))
                .add("leak.from", paper.from().map(sentences.formats()::day))
                .add("leak.until", paper.until().map(sentences.formats()::day))
                .add("fact.store", paper.where().storeNumber()).rows();
        return Page.of(
                new LetterView(paper, sentences.word("leak.title"), sentences).letter(paper.customer(),
                        paper.where().site(), paper.where().address(), facts),
                new Logged(paper.machines().stream().map(this::machine).toList(),
                        paper.kinds().stream().map(this::sum).toList()));
    }

    private RefrigerantWords words() {
        return new RefrigerantWords(sentences);
    }

    private Machine machine(OfMachine machine) {
        Handled last = machine.standing().last();
        return new Machine(new MachineName(machine.machine(), sentences).text(),
                words().holds(last), machine.entries().stream().map(this::visit).toList(),
                Sentences.capitalized(words().verdict(machine.standing())),
                machine.standing().rates().stream().map(words()::how).toList(),
                words().disposal(machine.standing()).orElse(""));
    }

    private Visit visit(MachineLog.Entry entry) {
        Handled handled = entry.handled();
        return new Visit(sentences.formats().day(handled.day()), handled.visit(),
                joined(List.of(words().purpose(handled.purpose()), words().moved(handled.added(), handled.from()),
                        words().lost(entry))),
                joined(List.of(words().moved(handled.recovered(), handled.into()))),
                joined(List.of(words().technician(handled))),
                joined(List.of(handled.leak(), handled.repair(), handled.test().map(words()::test))));
    }

    private static String joined(List<Optional<String>> texts) {
        return texts.stream().flatMap(Optional::stream).map(Sentences::capitalized)
                .collect(Collectors.joining("; "));
    }

    private String sum(OfKind kind) {
        return sentences.word("leak.of-kind", kind.kind(), words().ounces(kind.added()),
                words().ounces(kind.recovered()));
    }
}
