package icequill.render.view;

import icequill.document.PlanYear;
import icequill.document.PlanYear.MachineWork;
import icequill.document.PlanYear.SlotWork;
import icequill.explain.ConstantKey;
import icequill.explain.Explanation;
import icequill.explain.Fact;
import icequill.explain.Phrase;
import icequill.party.Wording;
import icequill.render.page.Texts;
import icequill.render.words.Sentences;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import javax.money.MonetaryAmount;

/** A year on a plan as texts, for {@code parts/plan.ftlh}. */
record PlanYearView(Sentences sentences, PriceSpan span) {

    record Year(String name, List<Visit> visits, List<Sum> sums) implements Texts {}

    /** Visits that are alike. */
    record Visit(String days, String scope, String takes, List<Work> machines, List<LineView.Row> lines, String net,
            String label)
            implements
            Texts {}

    /** What is done at machines, and how long they make no ice. */
    record Work(String where, String tasks, String withoutIce) implements Texts {}

    /** @param how may be empty */
    record Sum(String label, String how, String amount, boolean last) implements Texts {}

    /** What is done at a machine, wherever it is. */
    private record Done(String tasks, String withoutIce) {}

    Year year(PlanYear year) {
        return new Year(Sentences.capitalized(sentences.in(year.tier().name())),
                year.visits().stream().map(this::visit).toList(), sums(year));
    }

    Visit visit(SlotWork work) {
        int count = work.visits().size();
        String takes = sentences.word(work.people() == 1 ? "plan.takes-one" : "plan.takes",
                sentences.duration(work.minutes()), String.valueOf(work.people())) + " "
                + sentences.word("plan.from." + ConstantKey.of(work.from()),
                        sentences.duration(work.perhapsTooLong()))
                + " " + sentences.say(Phrase.of("plan.begins", new Fact.Time(work.arrival())));
        return new Visit(
                work.visits().stream().map(visit -> sentences.formats().day(visit.date()))
                        .collect(Collectors.joining("; ")),
                Sentences.capitalized(sentences.in(work.visits().getFirst().slot().scope().name())), takes,
                machines(work.machines()), new LikeLines(work.lines(), sentences).rows(),
                sentences.formats().amount(work.net()),
                sentences.word(count == 1 ? "plan.one-visit" : "plan.each-visit", String.valueOf(count)));
    }

    /** Machines to which the same is done stand together. */
    private List<Work> machines(List<MachineWork> all) {
        Map<Done, List<String>> alike = new LinkedHashMap<>();
        all.forEach(machine -> alike.computeIfAbsent(done(machine), work -> new ArrayList<>())
                .add(Sentences.capitalized(machine.where())));
        return alike.entrySet().stream().map(entry -> new Work(String.join("; ", entry.getValue()),
                entry.getKey().tasks(), entry.getKey().withoutIce())).toList();
    }

    private Done done(MachineWork work) {
        return new Done(work.tasks().stream().map(sentences::in).collect(Collectors.joining("; ")),
                sentences.duration(work.withoutIce()));
    }

    private List<Sum> sums(PlanYear year) {
        List<Sum> sums = new ArrayList<>();
        String visits = year.visits().stream()
                .map(work -> work.visits().size() + " × " + sentences.formats().amount(work.net()))
                .collect(Collectors.joining(" + "));
        sums.add(sum(sentences.word("plan.list"), visits, year.list(), false));
        if (!year.discount().isZero()) {
            sums.add(sum(
                    sentences.say(year.discountLabel()
                            .orElseGet(() -> Phrase.of("plan.discount", new Fact.Part(year.tier().discount())))),
                    "", year.discount().negate(), false));
        }
        if (!year.reserve().isZero()) {
            sums.add(sum(sentences.word("plan.reserve"), reserve(year.how()), year.reserve(), false));
        }
        sums.add(sum(sentences.word(span.key("plan.price")), sentences.say(Phrase.of("reason.price-step",
                new Fact.Amount(year.tier().step()))), year.price(), true));
        return List.copyOf(sums);
    }

    private String reserve(Explanation how) {
        return how.reasons().stream().filter(reason -> reason.key().equals("reason.included-calls"))
                .map(sentences::say).collect(Collectors.joining("; "));
    }

    private Sum sum(String label, String how, MonetaryAmount amount, boolean last) {
        return new Sum(label, how, sentences.formats().amount(amount), last);
    }

    /** Texts of the shop's own as sentences of a list. */
    List<String> sentencesOf(List<Wording> texts) {
        return texts.stream().map(sentences::in).map(Sentences::capitalized).toList();
    }
}
