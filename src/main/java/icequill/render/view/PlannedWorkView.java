package icequill.render.view;

import icequill.agreement.PlannedVisit;
import icequill.document.PlanYear;
import icequill.document.PlanYear.MachineWork;
import icequill.document.PlanYear.SlotWork;
import icequill.explain.Fact;
import icequill.explain.Phrase;
import icequill.party.Wording;
import icequill.render.page.Texts;
import icequill.render.words.Sentences;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What is done at each machine, said once for all plans, and the days on which each plan brings it. */
record PlannedWorkView(List<PlanYear> plans, Sentences sentences) {

    /** A kind of visit, with its machines; those to which the same is done stand together. */
    record Scope(String name, List<PlanYearView.Work> machines) implements Texts {}

    /** When the visits of a plan are, and what is done on some of them only. */
    record Days(String plan, List<String> lines) implements Texts {}

    List<Scope> scopes() {
        return byScope(plans.stream().flatMap(plan -> plan.visits().stream())).values().stream()
                .map(works -> new Scope(name(works.getFirst()), machines(works))).toList();
    }

    List<Days> days() {
        return plans.stream()
                .map(plan -> new Days(Sentences.capitalized(sentences.in(plan.tier().name())), days(plan))).toList();
    }

    private static Map<String, List<SlotWork>> byScope(Stream<SlotWork> works) {
        return works.collect(Collectors.groupingBy(work -> work.visits().getFirst().slot().scope().id(),
                LinkedHashMap::new, Collectors.toList()));
    }

    private String name(SlotWork work) {
        return Sentences.capitalized(sentences.in(work.visits().getFirst().slot().scope().name()));
    }

    private List<PlanYearView.Work> machines(List<SlotWork> works) {
        Map<String, List<MachineWork>> everywhere = works.stream().flatMap(work -> work.machines().stream())
                .collect(Collectors.groupingBy(MachineWork::where, LinkedHashMap::new, Collectors.toList()));
        Map<String, List<String>> alike = new LinkedHashMap<>();
        Map<String, Integer> withoutIce = new LinkedHashMap<>();
        everywhere.forEach((where, machine) -> {
            String tasks = tasks(machine);
            alike.computeIfAbsent(tasks, key -> new ArrayList<>()).add(Sentences.capitalized(where));
            machine.forEach(work -> withoutIce.merge(tasks, work.withoutIce(), Math::max));
        });
        return alike.entrySet().stream()
                .map(entry -> new PlanYearView.Work(String.join(", ", entry.getValue()), entry.getKey(),
                        sentences.duration(withoutIce.getOrDefault(entry.getKey(), 0))))
                .toList();
    }

    /** What is always done, then what on some visits only. */
    private String tasks(List<MachineWork> machine) {
        Set<Wording> sometimes = sometimes(machine);
        String always = machine.getFirst().tasks().stream().filter(task -> !sometimes.contains(task)).distinct()
                .map(sentences::in).collect(Collectors.joining("; "));
        return Sentences.capitalized(sometimes.isEmpty()
                ? always
                : sentences.word("plan.sometimes", always,
                        sometimes.stream().map(sentences::in).collect(Collectors.joining("; "))));
    }

    private static Set<Wording> sometimes(List<MachineWork> machine) {
        return machine.stream().flatMap(work -> work.tasks().stream())
                .filter(task -> machine.stream().anyMatch(work -> !work.tasks().contains(task)))
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private List<String> days(PlanYear plan) {
        List<String> lines = new ArrayList<>();
        Map<String, List<SlotWork>> all = byScope(plans.stream().flatMap(year -> year.visits().stream()));
        byScope(plan.visits().stream()).forEach((scope, works) -> {
            lines.add(name(works.getFirst()) + ": " + days(works) + ". " + takes(works));
            all.getOrDefault(scope, works).stream().flatMap(work -> work.machines().stream())
                    .collect(Collectors.groupingBy(MachineWork::where)).values().stream()
                    .flatMap(machine -> sometimes(machine).stream()).distinct()
                    .forEach(task -> occasional(task, works).ifPresent(lines::add));
        });
        return List.copyOf(lines);
    }

    private Optional<String> occasional(Wording task, List<SlotWork> works) {
        List<SlotWork> with = works.stream().filter(
                work -> work.machines().stream().anyMatch(machine -> machine.tasks().contains(task))).toList();
        return with.isEmpty()
                ? Optional.empty()
                : Optional.of(Sentences.capitalized(sentences.in(task)) + ": " + days(with) + ".");
    }

    private String days(List<SlotWork> works) {
        return works.stream().flatMap(work -> work.visits().stream()).map(PlannedVisit::date).sorted()
                .map(sentences.formats()::day).collect(Collectors.joining("; "));
    }

    private String takes(List<SlotWork> works) {
        int people = works.stream().mapToInt(SlotWork::people).max().orElse(1);
        int minutes = works.stream().mapToInt(SlotWork::minutes).max().orElse(0);
        boolean isOne = works.stream().allMatch(work -> work.minutes() == minutes);
        List<String> said = new ArrayList<>();
        said.add(sentences.word("plan.each-takes" + (people == 1 ? "-one" : ""),
                sentences.word(isOne ? "plan.about" : "plan.up-to", sentences.duration(minutes)),
                String.valueOf(people)));
        works.stream().mapToInt(SlotWork::perhapsTooLong).filter(gap -> gap > 0).max()
                .ifPresent(gap -> said.add(sentences.word("plan.from.timetable", sentences.duration(gap))));
        works.stream().map(SlotWork::arrival).distinct()
                .forEach(arrival -> said.add(sentences.say(Phrase.of("plan.begins", new Fact.Time(arrival)))));
        return String.join(" ", said);
    }
}
