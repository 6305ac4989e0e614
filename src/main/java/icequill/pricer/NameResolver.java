package icequill.pricer;

import icequill.agreement.Scope;
import icequill.explain.ConstantKey;
import icequill.party.Machine;
import icequill.party.Site;
import icequill.party.Wording;
import icequill.pricer.ResolvedVisit.Applied;
import icequill.pricer.ResolvedVisit.AtFlatPrice;
import icequill.pricer.ResolvedVisit.OwnWords;
import icequill.pricer.ResolvedVisit.Use;
import icequill.pricer.ResolvedVisit.Worker;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.rates.Applies;
import icequill.rates.ClassDiscount;
import icequill.rates.DocumentDiscount;
import icequill.rates.Fee;
import icequill.rates.Grade;
import icequill.rates.Material;
import icequill.rates.Modifier;
import icequill.rates.Rates;
import icequill.rates.Surcharge;
import icequill.work.Attendance;
import icequill.work.ChargeClass;
import icequill.work.Finding;
import icequill.work.OneOff;
import icequill.work.Outcome;
import icequill.work.Quantity;
import icequill.work.Sale;
import icequill.work.Task;
import icequill.work.Unit;
import icequill.work.Visit;
import icequill.work.Visit.Named;
import icequill.work.VisitLine;
import icequill.work.VisitLine.MaterialUsed;
import icequill.work.VisitLine.ModifierApplied;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Looks up every name in a visit and reports all that refer to nothing. For one visit. */
final class NameResolver {

    private final Visit visit;
    private final Site site;
    private final Rates rates;
    private final Problems problems = new Problems();

    NameResolver(Visit visit, Site site, Rates rates) {
        this.visit = visit;
        this.site = site;
        this.rates = rates;
    }

    Validated<ResolvedVisit> bind() {
        if (!visit.serviceCall().isDone()) {
            problems.add(Code.NOT_ALLOWED, visit.place(), "the service call is marked declined, but somebody came",
                    "charged, included, warranty, callback or goodwill");
        }
        visit.terms().route().filter(round -> visit.days() != 1).ifPresent(round -> problems.add(Code.NOT_ALLOWED,
                round.place(), visit.days() == 0
                        ? "on a route, but nobody came"
                        : "on a route, but lasts " + visit.days() + " days",
                "a visit of one day, or no route"));
        List<Worker> workers = workers();
        List<Use> uses = new ArrayList<>();
        for (Finding finding : visit.findings()) {
            uses.addAll(doses(finding));
            finding.chemicals().forEach(this::checkChemical);
        }
        List<Applied> modifiers = new ArrayList<>();
        List<OwnWords> own = new ArrayList<>();
        for (VisitLine line : visit.lines()) {
            switch (line) {
            case MaterialUsed used -> use(used).ifPresent(uses::add);
            case ModifierApplied applied -> modifier(applied).ifPresent(modifiers::add);
            case VisitLine.Own words -> own.add(own(words));
            }
        }
        checkPacks(uses);
        Optional<OwnWords> shipping = visit.sale().flatMap(Sale::shipping)
                .flatMap(charge -> shipping(charge, uses, own));
        List<AtFlatPrice> flat = visit.terms().flat()
                .flatMap(named -> find(named, "scope", rates.plans().scopes(), Scope::id)
                        .map(scope -> new FlatMachines(visit, site, rates, problems).at(scope, named, modifiers)))
                .orElse(List.of());
        List<Fee> fees = applying("fee", visit.terms().fees(), rates.adjustments().fees(), Fee::id, Fee::applies);
        List<Surcharge> surcharges = applying("surcharge", visit.terms().surcharges(),
                rates.adjustments().surcharges(), Surcharge::id, Surcharge::applies);
        Optional<ClassDiscount> classDiscount = visit.terms().classDiscount()
                .flatMap(name -> find(name, "class discount",
                        rates.adjustments().classDiscounts(), ClassDiscount::id));
        Optional<DocumentDiscount> documentDiscount = visit.terms().documentDiscount().flatMap(name -> find(name,
                "document discount", rates.adjustments().documentDiscounts(), DocumentDiscount::id));
        return problems
                .or(() -> new ResolvedVisit(visit, site, rates, workers, List.copyOf(uses), List.copyOf(modifiers),
                        List.copyOf(own), shipping, flat, fees,
                        surcharges,
                        Stream.concat(classDiscount.map(List::of).orElse(rates.agreed().discounts()).stream(),
                                visit.terms().less().stream().map(NameResolver::oneOff)).toList(),
                        documentDiscount));
    }

    private static ClassDiscount oneOff(OneOff.OnClass less) {
        return new ClassDiscount("less", Wording.same(less.reason()), Map.of(less.chargeClass(), less.percent()),
                Optional.empty(), less.place());
    }

    /** Who left and came back is one person. */
    private List<Worker> workers() {
        Map<Object, List<Attendance>> byPerson = new LinkedHashMap<>();
        for (Attendance person : visit.people()) {
            Object who = person.known().<Object>map(name -> name).orElseGet(Object::new);
            byPerson.computeIfAbsent(who, name -> new ArrayList<>()).add(person);
        }
        return byPerson.values().stream().flatMap(stays -> worker(stays).stream()).toList();
    }

    private Optional<Worker> worker(List<Attendance> stays) {
        List<Attendance> inOrder = stays.stream().sorted(Comparator.comparing(Attendance::arrived)).toList();
        for (int i = 1; i < inOrder.size(); i++) {
            checkStays(inOrder.get(i - 1), inOrder.get(i));
        }
        List<Optional<Grade>> grades = stays.stream().map(this::grade).toList();
        return grades.getFirst().map(grade -> new Worker(inOrder, grade));
    }

    private void checkStays(Attendance before, Attendance after) {
        if (after.overlaps(before)) {
            problems.add(Code.OVERLAP, after.place(),
                    after.person() + " is here twice at the same time: from " + before.arrived().toLocalDateTime()
                            + " to " + before.left().toLocalDateTime() + ", and from "
                            + after.arrived().toLocalDateTime(),
                    "each person once at any time");
        }
        if (!after.grade().equals(before.grade())) {
            problems.add(Code.NOT_ALLOWED, after.place(),
                    after.person() + " has the grade \"" + after.grade() + "\" here, and \"" + before.grade()
                            + "\" at " + before.place().reference(),
                    "one grade for each person of a visit");
        }
    }

    private Optional<Grade> grade(Attendance person) {
        if (person.spells().stream().anyMatch(spell -> !spell.outcome().isDone())) {
            problems.add(Code.NOT_ALLOWED, person.place(), "time that was spent is marked declined",
                    "charged, included, warranty, callback or goodwill");
        }
        Named name = new Named(person.grade(), person.place());
        return find(name, "grade", rates.labor().grades(), Grade::id);
    }

    private List<Use> doses(Finding finding) {
        Optional<Machine> machine = machine(finding.machine(), finding.place());
        List<Use> doses = new ArrayList<>();
        for (Finding.TaskDone done : finding.tasks()) {
            Optional<Task> task = find(new Named(done.task(), done.place()), "task", rates.tasks(), Task::id);
            if (task.isPresent() && machine.isPresent()) {
                doses.addAll(doses(task.get(), machine.get(), done));
            }
        }
        return doses;
    }

    private List<Use> doses(Task task, Machine machine, Finding.TaskDone done) {
        if (!task.suits(machine)) {
            problems.add(Code.NOT_ALLOWED, done.place(),
                    "the task \"" + task.id() + "\" is not for the machine \"" + machine.id() + "\"",
                    "it is for machines of make " + task.makes() + " and cooling " + task.coolings());
            return List.of();
        }
        List<Use> uses = new ArrayList<>();
        for (Task.Dose dose : task.doses()) {
            Optional<Material> material = find(new Named(dose.material(), dose.place()), "material", rates.materials(),
                    Material::id);
            Optional<BigDecimal> quantity = dose.quantity(machine.harvestRate());
            if (quantity.isEmpty()) {
                problems.add(Code.OUT_OF_RANGE, done.place(),
                        "the task \"" + task.id() + "\" has no dose of " + dose.material() + " for a machine of "
                                + machine.harvestRate().toPlainString() + " lb",
                        "add a step to the dose at " + dose.place().reference());
            }
            if (material.isPresent() && quantity.isPresent()) {
                uses.add(new Use(material.get(), quantity.get(), Optional.of(machine), done.outcome(),
                        Optional.of(task), Optional.empty()));
            }
        }
        return uses;
    }

    /** What the record says of chemicals is not priced, but it must name chemicals. */
    private void checkChemical(Finding.ChemicalUse used) {
        List<Material> chemicals = rates.materials().stream()
                .filter(material -> material.chargeClass() == ChargeClass.CHEMICALS).toList();
        find(new Named(used.material(), used.place()), "chemical", chemicals, Material::id)
                .filter(material -> material.label().isEmpty()).ifPresent(
                        material -> problems.add(material.withoutLabel(used.place(), "what was used")));
    }

    private Optional<Use> use(MaterialUsed line) {
        Optional<Machine> machine = line.machine().flatMap(id -> machine(id, line.place()));
        Optional<Material> material = find(new Named(line.material(), line.place()), "material", rates.materials(),
                Material::id);
        material.ifPresent(found -> checkWarranty(line, machine, found.chargeClass()));
        material.filter(found -> found.chargeClass() == ChargeClass.CHEMICALS && found.label().isEmpty())
                .ifPresent(found -> problems.add(found.withoutLabel(line.place(), "what was used")));
        return material
                .map(found -> new Use(found, line.quantity(), machine, line.outcome(), Optional.empty(), line.less()));
    }

    /** What sending costs is taxed as what is sent. */
    private Optional<OwnWords> shipping(Sale.Shipping charge, List<Use> uses, List<OwnWords> own) {
        List<ChargeClass> sent = Stream.concat(uses.stream().map(use -> use.material().chargeClass()),
                own.stream().map(words -> words.line().chargeClass())).distinct().toList();
        if (charge.on().isEmpty() && sent.size() != 1) {
            problems.add(Code.MISSING, charge.place(), "things of the classes " + words(sent) + " are sent together",
                    "class: of shipping, which taxes go by");
            return Optional.empty();
        }
        ChargeClass on = charge.on().orElseGet(sent::getFirst);
        return Optional.of(new OwnWords(new VisitLine.Own("", on, Quantity.of(1, Unit.EACH), charge.price(),
                Optional.empty(), Optional.empty(), Outcome.CHARGED, Optional.empty(), charge.place()),
                Optional.empty()));
    }

    private static String words(List<ChargeClass> classes) {
        return classes.stream().map(ConstantKey::of).collect(Collectors.joining(", "));
    }

    /** What is sold by the pack is one line, so one discount can be given on it. */
    private void checkPacks(List<Use> uses) {
        Map<Material, OneOff> given = new HashMap<>();
        uses.stream().filter(use -> use.material().pack().isPresent()).forEach(use -> use.less()
                .filter(less -> given.putIfAbsent(use.material(), less) != null)
                .ifPresent(second -> problems.add(Code.DUPLICATE_NAME, second.place(),
                        "a second discount on " + use.material().id() + ", which is charged by the pack in one line",
                        "one of the two")));
    }

    private Optional<Applied> modifier(ModifierApplied line) {
        Optional<Machine> machine = line.machine().flatMap(id -> machine(id, line.place()));
        Optional<Modifier> modifier = find(new Named(line.modifier(), line.place()), "modifier",
                rates.adjustments().modifiers(), Modifier::id);
        modifier.ifPresent(found -> checkWarranty(line, machine, found.chargeClass()));
        return modifier.map(found -> new Applied(found, line.quantity(), machine, line.outcome(), line.less()));
    }

    private OwnWords own(VisitLine.Own line) {
        Optional<Machine> machine = line.machine().flatMap(id -> machine(id, line.place()));
        checkWarranty(line, machine, line.chargeClass());
        return new OwnWords(line, machine);
    }

    /** Nobody pays a claim for a machine whose warranty has ended, so it must not be left off the invoice as one. */
    private void checkWarranty(VisitLine line, Optional<Machine> machine, ChargeClass chargeClass) {
        if (line.outcome() != Outcome.WARRANTY || machine.isEmpty()) {
            return;
        }
        Optional<LocalDate> until = machine.get().warranty()
                .map(warranty -> chargeClass.isLabor() ? warranty.laborUntil() : warranty.partsUntil());
        if (until.isEmpty() || until.get().isBefore(visit.day())) {
            problems.add(Code.NOT_ALLOWED, line.place(),
                    "the warranty of machine \"" + machine.get().id() + "\" "
                            + until.map(day -> "ended on " + day).orElse("is not on record"),
                    "another outcome, or the right warranty dates in the site's file");
        }
    }

    /** Those of every visit where they are allowed, of which a sale is none, and those that this one names, which must be allowed. */
    private <T> List<T> applying(String kind, List<Named> names, List<T> known, Function<T, String> id,
            Function<T, Applies> applies) {
        List<T> named = new ArrayList<>();
        for (Named name : names) {
            Optional<T> found = find(name, kind, known, id);
            found.ifPresent(named::add);
            found.map(applies).filter(where -> !where.allows(site.address())).ifPresent(where -> problems.add(
                    Code.NOT_ALLOWED, name.place(),
                    "the " + kind + " \"" + name.id() + "\" is not allowed in " + site.address().country() + "-"
                            + site.address().region(),
                    "a site in " + String.join(", ", new TreeSet<>(where.regions()))));
        }
        return known.stream()
                .filter(each -> named.contains(each)
                        || (visit.sale().isEmpty() && applies.apply(each).always()
                                && applies.apply(each).allows(site.address())))
                .toList();
    }

    private Optional<Machine> machine(String id, Place place) {
        return find(new Named(id, place), "machine", site.machines(), Machine::id);
    }

    private <T> Optional<T> find(Named name, String kind, Collection<T> known, Function<T, String> id) {
        Optional<T> found = known.stream().filter(candidate -> id.apply(candidate).equals(name.id())).findFirst();
        if (found.isEmpty()) {
            problems.add(Problem.unknownName(name.place(), kind, name.id(), known.stream().map(id).toList()));
        }
        return found;
    }
}
