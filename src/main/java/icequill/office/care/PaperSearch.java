package icequill.office.care;

import icequill.answer.history.Period;
import icequill.explain.ConstantKey;
import icequill.files.form.VisitNames;
import icequill.ledger.Reading;
import icequill.ledger.entries.SiteEntry;
import icequill.ledger.find.BillState;
import icequill.ledger.find.FindWords;
import icequill.ledger.find.PaperFilter;
import icequill.ledger.papers.IssuedPaper;
import icequill.ledger.papers.PaperKind;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.shop.UnknownName;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Looks in the book for the papers that somebody wishes to see. */
record PaperSearch(Reading open, PaperWish wish) {

    /** Both kinds of quotes. */
    private static final String QUOTE = "quote";
    /** A database takes no more values in one question. */
    private static final int VISITS_AT_ONCE = 500;

    /** The newest first, or all that is wrong with what is asked for. */
    Validated<List<IssuedPaper>> found() {
        Problems problems = new Problems();
        if (wish.isEmpty()) {
            problems.add(Code.MISSING, Place.NOWHERE, "what to look for is missing",
                    "words, --month, --kind, --state, --caller or --store");
        }
        Optional<Period> period = problems.take(wish.period().period());
        Set<PaperKind> kinds = EnumSet.noneOf(PaperKind.class);
        wish.kinds().forEach(kind -> kinds.addAll(kinds(kind, problems)));
        Optional<BillState> state = wish.state().flatMap(name -> state(name, problems));
        if (state.isPresent() && !kinds.isEmpty() && !kinds.contains(PaperKind.INVOICE)) {
            problems.add(Code.NOT_ALLOWED, Place.NOWHERE,
                    "--state " + wish.state().orElse("") + " is of invoices, and none is among --kind "
                            + String.join(",", wish.kinds()),
                    "--kind invoice, or no --state");
        }
        Set<String> sites = wish.store().map(store -> sites(store, problems)).orElse(Set.of());
        Optional<List<String>> visits = wish.caller().map(caller -> visits(caller, problems));
        return problems.or(() -> papers(new PaperFilter(period.flatMap(Period::from), period.flatMap(Period::until),
                kinds.stream().map(PaperKind::name).collect(Collectors.toSet()), state, sites, Set.of()), visits));
    }

    private List<IssuedPaper> papers(PaperFilter filter, Optional<List<String>> visits) {
        if (visits.isEmpty()) {
            return new BillSearch(open, wish.text(), wish.most()).find(filter);
        }
        List<IssuedPaper> papers = new ArrayList<>();
        for (int from = 0; from < visits.get().size(); from += VISITS_AT_ONCE) {
            Set<String> some = Set.copyOf(
                    visits.get().subList(from, Math.min(visits.get().size(), from + VISITS_AT_ONCE)));
            papers.addAll(new BillSearch(open, wish.text(), wish.most()).find(filter.of(some)));
        }
        return papers.stream().sorted(Comparator.comparing(IssuedPaper::issuedAt).reversed()).limit(wish.most())
                .toList();
    }

    private static Set<PaperKind> kinds(String name, Problems problems) {
        Set<PaperKind> kinds = name.equals(QUOTE)
                ? EnumSet.of(PaperKind.MAINTENANCE_QUOTE, PaperKind.REPAIR_QUOTE)
                : Arrays.stream(PaperKind.values()).filter(kind -> ConstantKey.of(kind).equals(name))
                        .collect(Collectors.toCollection(() -> EnumSet.noneOf(PaperKind.class)));
        if (kinds.isEmpty()) {
            problems.add(Problem.unknownName(Place.NOWHERE, "kind of paper", name,
                    Stream.concat(Stream.of(QUOTE), Arrays.stream(PaperKind.values()).map(ConstantKey::of))
                            .toList()));
        }
        return kinds;
    }

    private static Optional<BillState> state(String name, Problems problems) {
        Optional<BillState> state = Arrays.stream(BillState.values())
                .filter(known -> ConstantKey.of(known).equals(name)).findFirst();
        if (state.isEmpty()) {
            problems.add(Problem.unknownName(Place.NOWHERE, "state of an invoice", name,
                    Arrays.stream(BillState.values()).map(ConstantKey::of).toList()));
        }
        return state;
    }

    /** Those of the number, and those that were merged into them. */
    private Set<String> sites(String store, Problems problems) {
        Set<String> sites = new HashSet<>();
        Set<String> known = new HashSet<>();
        for (SiteEntry site : open.entries().sites()) {
            site.storeNumber().ifPresent(number -> {
                known.add(number);
                if (FindWords.plain(number).equals(FindWords.plain(store.strip()))) {
                    sites.add(site.id());
                    sites.addAll(open.entries().sitesMergedInto(site.id()));
                }
            });
        }
        if (sites.isEmpty()) {
            problems.add(UnknownName.name("store", store, known, "see: icequill site list"));
        }
        return sites;
    }

    private List<String> visits(String caller, Problems problems) {
        Map<String, String> calls = open.entries().calls();
        Set<String> known = new HashSet<>();
        List<String> visits = new ArrayList<>();
        calls.forEach((id, data) -> VisitNames.of(data).caller().ifPresent(name -> {
            known.add(name);
            if (FindWords.plain(name).contains(FindWords.plain(caller.strip()))) {
                visits.add(id);
            }
        }));
        if (visits.isEmpty()) {
            problems.add(UnknownName.name("call by", caller, known, "a part of the name is enough"));
        }
        return visits;
    }
}
