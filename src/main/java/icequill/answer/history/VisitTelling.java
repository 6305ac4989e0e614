package icequill.answer.history;

import icequill.ledger.entries.VisitEntry;
import icequill.ledger.entries.Withdrawal;
import icequill.ledger.papers.IssuedPaper;
import icequill.life.refrigerant.Handled;
import icequill.party.Site;
import icequill.rates.Grade;
import icequill.rates.Material;
import icequill.rates.Rates;
import icequill.render.words.MachineName;
import icequill.render.words.RefrigerantWords;
import icequill.render.words.Sentences;
import icequill.work.ChargeClass;
import icequill.work.Finding;
import icequill.work.PurchaseOrder;
import icequill.work.Quantity;
import icequill.work.Sale;
import icequill.work.Visit;
import icequill.work.VisitLine;
import icequill.work.VisitLine.MaterialUsed;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * Tells visits of a site. What the rates of a visit's day do not know any more is told by its id, since a history must not end
 * where a price list does.
 *
 * @param site empty where it cannot be read any more
 * @param sentences of the reader's language
 */
public record VisitTelling(Optional<Site> site, Sentences sentences) {

    private static final Set<ChargeClass> PUT_IN = Set.of(ChargeClass.FILTERS, ChargeClass.PARTS);

    /**
     * What the book holds of a visit.
     *
     * @param visit empty where what it said was forgotten
     * @param rates of its day; empty where there are none any more
     * @param machine the only one to tell of; empty for all
     */
    public record Kept(VisitEntry entry, VisitState state, Optional<Visit> visit, Optional<Rates> rates,
            Optional<Withdrawal> withdrawal, List<IssuedPaper> papers, Optional<String> machine) {

        private boolean tellsOf(String id) {
            return machine.isEmpty() || machine.get().equals(id);
        }
    }

    public ToldVisit told(Kept kept) {
        VisitEntry entry = kept.entry();
        Optional<Visit> visit = kept.visit();
        return new ToldVisit(entry.id(), entry.site(), kept.state(), entry.began(), entry.ended(),
                visit.flatMap(Visit::sale).map(Sale::way), visit.flatMap(Visit::call),
                visit.stream().flatMap(found -> people(kept, found)).toList(),
                visit.stream().flatMap(found -> machines(kept, found)).toList(),
                visit.map(found -> parts(kept, found, line -> line.machine().isEmpty())).orElse(List.of()),
                entry.purchaseOrder(), visit.map(Visit::order).flatMap(PurchaseOrder::approver),
                visit.flatMap(found -> found.handover().safeFrom()), visit.flatMap(found -> found.handover().nextDue()),
                kept.withdrawal().map(Withdrawal::reason), entry.isForgotten(),
                kept.papers().stream().map(IssuedPaper::number).toList());
    }

    private Stream<ToldVisit.Person> people(Kept kept, Visit visit) {
        return visit.people().stream().map(person -> new ToldVisit.Person(person.person(),
                kept.rates().flatMap(rates -> rates.labor().grade(person.grade())).map(Grade::name).map(sentences::in)
                        .orElse(person.grade()),
                person.arrived(), person.left()));
    }

    /** Those that something was found or done at, and those that only a part was put into. */
    private Stream<ToldMachine> machines(Kept kept, Visit visit) {
        List<String> found = visit.findings().stream().map(Finding::machine).toList();
        Stream<Finding> others = visit.lines().stream()
                .filter(line -> line instanceof MaterialUsed || (line instanceof VisitLine.Own own && isPart(own)))
                .flatMap(line -> line.machine().stream()).distinct().filter(id -> !found.contains(id))
                .map(id -> new Finding(id, Optional.empty(), Optional.empty(), Optional.empty(), List.of(), List.of(),
                        List.of(), visit.place()));
        return Stream.concat(visit.findings().stream(), others).filter(finding -> kept.tellsOf(finding.machine()))
                .map(finding -> machine(kept, visit, finding));
    }

    private ToldMachine machine(Kept kept, Visit visit, Finding finding) {
        String id = finding.machine();
        return new ToldMachine(id,
                site.flatMap(where -> where.machine(id)).map(machine -> new MachineName(machine, sentences).text())
                        .orElse(id),
                finding.complaint(), finding.cause(), finding.correction(), finding.side(), tasks(kept, finding, true),
                Stream.concat(tasks(kept, finding, false).stream(), declined(kept, visit, id)).toList(),
                finding.readings(), parts(kept, visit, line -> line.machine().filter(id::equals).isPresent()),
                refrigerant(kept, visit, finding), finding.recommendations());
    }

    private List<String> refrigerant(Kept kept, Visit visit, Finding finding) {
        return site.flatMap(where -> kept.rates().flatMap(rates -> Handled.of(visit, finding, where, rates)))
                .map(new RefrigerantWords(sentences)::told).orElse(List.of());
    }

    private List<String> tasks(Kept kept, Finding finding, boolean done) {
        return finding.tasks().stream().filter(task -> task.outcome().isDone() == done)
                .map(task -> kept.rates().flatMap(rates -> rates.task(task.task()))
                        .map(known -> done && !kept.entry().isPlanned() ? known.told() : known.name())
                        .map(sentences::in).orElse(task.task()))
                .toList();
    }

    private List<String> parts(Kept kept, Visit visit, Predicate<VisitLine> where) {
        return visit.lines().stream().filter(line -> line.outcome().isDone()).filter(where)
                .flatMap(line -> part(kept, line)).toList();
    }

    private Stream<String> declined(Kept kept, Visit visit, String machine) {
        return visit.lines().stream().filter(line -> !line.outcome().isDone())
                .filter(line -> line.machine().filter(machine::equals).isPresent())
                .flatMap(line -> part(kept, line));
    }

    private Stream<String> part(Kept kept, VisitLine line) {
        return switch (line) {
        case MaterialUsed used -> part(kept, used);
        case VisitLine.Own own when isPart(own) -> Stream.of(counted(own.text(), sentences.quantity(own.quantity())));
        case VisitLine.Own own -> Stream.empty();
        case VisitLine.ModifierApplied applied -> Stream.empty();
        };
    }

    /** Also one that was refused. */
    private static boolean isPart(VisitLine.Own own) {
        return own.chargeClass().isFurnished() && own.back().isEmpty();
    }

    /** Of what is known not to be put in, such as cleaners, nothing. */
    private Stream<String> part(Kept kept, MaterialUsed used) {
        Optional<Material> material = kept.rates().flatMap(rates -> rates.material(used.material()));
        return material.filter(known -> !PUT_IN.contains(known.chargeClass())).isPresent()
                ? Stream.empty()
                : Stream.of(material.map(known -> counted(sentences.in(known.name()),
                        sentences.quantity(new Quantity(used.quantity(), known.unit()))))
                        .orElseGet(() -> counted(used.material(), sentences.formats().number(used.quantity()))));
    }

    /** One piece is not counted. */
    private static String counted(String name, String quantity) {
        return quantity.equals("1") ? name : name + ", " + quantity;
    }
}
