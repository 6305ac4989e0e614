package icequill.render.view;

import icequill.document.PlanYear;
import icequill.document.PlanYear.MachineWork;
import icequill.document.PlanYear.SlotWork;
import icequill.explain.ConstantKey;
import icequill.explain.Explanation;
import icequill.explain.Fact;
import icequill.explain.Phrase;
import icequill.party.Wording;
import icequill.render.words.Sentences;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import javax.money.MonetaryAmount;

/** A year on a plan as texts, for {@code parts/plan.ftlh}. */
record PlanYearView(Sentences sentences) {

    Map<String, Object> model(PlanYear year) {
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("name", Sentences.capitalized(sentences.in(year.tier().name())));
        model.put("visits", year.visits().stream().map(this::visit).toList());
        model.put("sums", sums(year));
        return model;
    }

    /** Visits that are alike. */
    Map<String, Object> visit(SlotWork work) {
        Map<String, Object> model = new LinkedHashMap<>();
        int count = work.visits().size();
        model.put("days", work.visits().stream().map(visit -> sentences.formats().day(visit.date()))
                .collect(Collectors.joining("; ")));
        model.put("scope", Sentences.capitalized(sentences.in(work.visits().getFirst().slot().scope().name())));
        model.put("takes", sentences.word(work.people() == 1 ? "plan.takes-one" : "plan.takes",
                sentences.duration(work.minutes()), String.valueOf(work.people())) + " "
                + sentences.word("plan.from." + ConstantKey.of(work.from()),
                        sentences.duration(work.perhapsTooLong()))
                + " "
                + sentences.say(Phrase.of("plan.begins", new Fact.Time(work.arrival()))));
        model.put("machines", machines(work.machines()));
        model.put("lines", new LikeLines(work.lines(), sentences).rows());
        model.put("net", sentences.formats().amount(work.net()));
        model.put("label", sentences.word(count == 1 ? "plan.one-visit" : "plan.each-visit", String.valueOf(count)));
        return model;
    }

    /** Machines to which the same is done stand together. */
    private List<Map<String, String>> machines(List<MachineWork> all) {
        Map<Map<String, String>, List<String>> alike = new LinkedHashMap<>();
        all.forEach(machine -> alike.computeIfAbsent(done(machine), work -> new ArrayList<>())
                .add(Sentences.capitalized(machine.where())));
        return alike.entrySet().stream().map(entry -> {
            Map<String, String> row = new LinkedHashMap<>(entry.getKey());
            row.put("where", String.join("; ", entry.getValue()));
            return row;
        }).toList();
    }

    private Map<String, String> done(MachineWork work) {
        return Map.of("tasks", work.tasks().stream().map(sentences::in).collect(Collectors.joining("; ")),
                "withoutIce", sentences.duration(work.withoutIce()));
    }

    private List<Map<String, Object>> sums(PlanYear year) {
        List<Map<String, Object>> sums = new ArrayList<>();
        String visits = year.visits().stream()
                .map(work -> work.visits().size() + " × " + sentences.formats().amount(work.net()))
                .collect(Collectors.joining(" + "));
        sums.add(sum(sentences.word("plan.list"), visits, year.list(), false));
        if (!year.discount().isZero()) {
            sums.add(sum(sentences.word("plan.discount", sentences.formats().percent(year.tier().discount().value())),
                    "", year.discount().negate(), false));
        }
        if (!year.reserve().isZero()) {
            sums.add(sum(sentences.word("plan.reserve"), reserve(year.how()), year.reserve(), false));
        }
        sums.add(sum(sentences.word("plan.price"), sentences.say(Phrase.of("reason.price-step",
                new Fact.Amount(year.tier().step()))), year.price(), true));
        return sums;
    }

    private String reserve(Explanation how) {
        return how.reasons().stream().filter(reason -> reason.key().equals("reason.included-calls"))
                .map(sentences::say).collect(Collectors.joining("; "));
    }

    private Map<String, Object> sum(String label, String how, MonetaryAmount amount, boolean last) {
        return Map.of("label", label, "how", how, "amount", sentences.formats().amount(amount), "last", last);
    }

    /** Texts of the shop's own as sentences of a list. */
    List<String> sentencesOf(List<Wording> texts) {
        return texts.stream().map(sentences::in).map(Sentences::capitalized).toList();
    }
}
