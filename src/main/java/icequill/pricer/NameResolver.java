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
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.rates.Applies;
import icequill.rates.ClassDiscount;
import icequill.rates.DocumentDiscount;
import icequill.rates.Fee;
import icequill.rates.Material;
import icequill.rates.Modifier;
import icequill.rates.Rates;
import icequill.rates.Surcharge;
import icequill.work.ChargeClass;
import icequill.work.Finding;
import icequill.work.OneOff;
import icequill.work.Outcome;
import icequill.work.Quantity;
import icequill.work.Sale;
import icequill.work.Unit;
import icequill.work.Visit;
import icequill.work.Visit.Named;
import icequill.work.VisitLine;
import icequill.work.VisitLine.MaterialUsed;
import icequill.work.VisitLine.ModifierApplied;
import java.time.LocalDate;
import java.util.ArrayList;
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
    private final KnownNames names;

    NameResolver(Visit visit, Site site, Rates rates) {
        this.visit = visit;
        this.site = site;
        this.rates = rates;
        this.names = new KnownNames(site, problems);
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
        List<Worker> workers = new WorkerNames(visit, rates, names).workers();
        MaterialNames materials = new MaterialNames(rates, names);
        List<Use> uses = new ArrayList<>();
        for (Finding finding : visit.findings()) {
            uses.addAll(materials.doses(finding));
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
        materials.checkPacks(uses);
        new BlockNames(visit, rates, names).check();
        Optional<OwnWords> shipping = visit.sale().flatMap(Sale::shipping)
                .flatMap(charge -> shipping(charge, uses, own));
        List<AtFlatPrice> flat = visit.terms().flat()
                .flatMap(named -> names.find(named, "scope", rates.plans().scopes(), Scope::id)
                        .map(scope -> new FlatMachines(visit, site, rates, problems).at(scope, named, modifiers)))
                .orElse(List.of());
        List<Fee> fees = applying("fee", visit.terms().fees(), rates.adjustments().fees(), Fee::id, Fee::applies);
        List<Surcharge> surcharges = applying("surcharge", visit.terms().surcharges(),
                rates.adjustments().surcharges(), Surcharge::id, Surcharge::applies);
        Optional<ClassDiscount> classDiscount = visit.terms().classDiscount()
                .flatMap(name -> names.find(name, "class discount",
                        rates.adjustments().classDiscounts(), ClassDiscount::id));
        Optional<DocumentDiscount> documentDiscount = visit.terms().documentDiscount().flatMap(name -> names.find(name,
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

    private Optional<Use> use(MaterialUsed line) {
        Optional<Machine> machine = line.machine().flatMap(id -> names.machine(id, line.place()));
        Optional<Material> material = names.find(new Named(line.material(), line.place()), "material",
                rates.materials(),
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
                Optional.empty(), Optional.empty(), Optional.empty(), Outcome.CHARGED, Optional.empty(),
                charge.place()),
                Optional.empty()));
    }

    private static String words(List<ChargeClass> classes) {
        return classes.stream().map(ConstantKey::of).collect(Collectors.joining(", "));
    }

    private Optional<Applied> modifier(ModifierApplied line) {
        Optional<Machine> machine = line.machine().flatMap(id -> names.machine(id, line.place()));
        Optional<Modifier> modifier = names.find(new Named(line.modifier(), line.place()), "modifier",
                rates.adjustments().modifiers(), Modifier::id);
        modifier.ifPresent(found -> checkWarranty(line, machine, found.chargeClass()));
        return modifier.map(found -> new Applied(found, line.quantity(), machine, line.outcome(), line.less()));
    }

    private OwnWords own(VisitLine.Own line) {
        Optional<Machine> machine = line.machine().flatMap(id -> names.machine(id, line.place()));
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
    private <T> List<T> applying(String kind, List<Named> asked, List<T> known, Function<T, String> id,
            Function<T, Applies> applies) {
        List<T> named = new ArrayList<>();
        for (Named name : asked) {
            Optional<T> found = names.find(name, kind, known, id);
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
}
