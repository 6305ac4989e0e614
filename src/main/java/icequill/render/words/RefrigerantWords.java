package icequill.render.words;

import icequill.explain.ConstantKey;
import icequill.life.refrigerant.Handled;
import icequill.life.refrigerant.LeakRate;
import icequill.life.refrigerant.MachineLog;
import icequill.life.refrigerant.RefrigerantLog.Standing;
import icequill.life.refrigerant.Verdict;
import icequill.rates.RefrigerantRules.LeakRule;
import icequill.work.Quantity;
import icequill.work.RefrigerantWork.LeakTest;
import icequill.work.RefrigerantWork.Purpose;
import icequill.work.TechnicianCertificate;
import icequill.work.Unit;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Says what was done with refrigerant, and what the rules ask for. */
public record RefrigerantWords(Sentences sentences) {

    /** A weight. */
    public String ounces(BigDecimal ounces) {
        return sentences.quantity(new Quantity(ounces, Unit.OUNCE));
    }

    /** What went in or came out, and the cylinder; empty where nothing did. */
    public Optional<String> moved(BigDecimal ounces, Optional<String> cylinder) {
        return ounces.signum() == 0
                ? Optional.empty()
                : Optional.of(cylinder.map(name -> sentences.word("leak.cylinder", ounces(ounces), name))
                        .orElseGet(() -> ounces(ounces)));
    }

    /** Why it was done, where that is more than service. */
    public Optional<String> purpose(Purpose purpose) {
        return Optional.of(purpose).filter(why -> why != Purpose.SERVICE)
                .map(why -> sentences.word("leak.purpose." + ConstantKey.of(why)));
    }

    /** Who did it, with his certificates. */
    public Optional<String> technician(Handled handled) {
        return handled.technician().map(name -> handled.certificates().isEmpty()
                ? name
                : name + ", " + handled.certificates().stream().map(this::certificate)
                        .collect(Collectors.joining(", ")));
    }

    private String certificate(TechnicianCertificate held) {
        String type = sentences.word("certificate." + ConstantKey.of(held.type()));
        return held.number().map(number -> type + " (" + number + ")").orElse(type);
    }

    /** Which refrigerant a machine holds, and how much. */
    public String holds(Handled handled) {
        return sentences.word("leak.holds", handled.kind(), ounces(handled.charge()));
    }

    /** What a visit did with it, line by line. */
    public List<String> told(Handled handled) {
        return Stream.of(Optional.of(holds(handled)),
                purpose(handled.purpose()), added(handled.added(), handled.from()),
                recovered(handled.recovered(), handled.into()), technician(handled), handled.leak(),
                handled.repair(), handled.test().map(this::test)).flatMap(Optional::stream).toList();
    }

    /** What went in; empty where nothing did. */
    public Optional<String> added(BigDecimal ounces, Optional<String> cylinder) {
        return moved(ounces, cylinder).map(text -> sentences.word("leak.added", text));
    }

    /** What came out; empty where nothing did. */
    public Optional<String> recovered(BigDecimal ounces, Optional<String> cylinder) {
        return moved(ounces, cylinder).map(text -> sentences.word("leak.recovered", text));
    }

    /** Whether a repair holds. */
    public String test(LeakTest test) {
        String result = sentences
                .word("leak.test." + ConstantKey.of(test.when()) + (test.tight() ? ".tight" : ".leaks"));
        return test.how().map(how -> result + " (" + how + ")").orElse(result);
    }

    /** A rate in percent a year. */
    public String percent(LeakRate rate) {
        return sentences.formats().percent(rate.percent());
    }

    /** How it was figured. */
    public String how(LeakRate rate) {
        return sentences.word("leak.how." + ConstantKey.of(rate.method()), ounces(rate.lost()), ounces(rate.charge()),
                String.valueOf(rate.days()), percent(rate));
    }

    /** How what had leaked was figured, where that is not all that was added. */
    public Optional<String> lost(MachineLog.Entry entry) {
        return entry.back().signum() == 0
                ? Optional.empty()
                : Optional.of(sentences.word("leak.lost", ounces(entry.handled().added()), ounces(entry.back()),
                        ounces(entry.lost())));
    }

    /** What the rules ask for of a machine. */
    public String verdict(Standing machine) {
        Verdict verdict = machine.verdict();
        return sentences.word("leak.verdict." + ConstantKey.of(verdict.outcome()), machine.last().kind(),
                verdict.rule().map(LeakRule::name).map(sentences::in).orElse(""),
                verdict.rule().map(rule -> sentences.quantity(new Quantity(rule.pounds(), Unit.POUND))).orElse(""),
                ounces(machine.last().charge()), verdict.limit().map(sentences.formats()::percent).orElse(""));
    }

    /** That a record of its disposal must be kept; empty where none need be. */
    public Optional<String> disposal(Standing machine) {
        return machine.disposal().map(rule -> sentences.word("leak.disposal", sentences.in(rule.name())));
    }
}
