package icequill.files.form;

import icequill.files.pricing.Prices;
import icequill.files.yaml.Fields;
import icequill.party.Shop;
import icequill.problem.Code;
import icequill.work.Attendance;
import icequill.work.Call;
import icequill.work.CallSide;
import icequill.work.Diagnosis;
import icequill.work.Finding;
import icequill.work.OneOff;
import icequill.work.Outcome;
import icequill.work.PurchaseOrder;
import icequill.work.Route;
import icequill.work.Sale;
import icequill.work.Visit;
import icequill.work.Visit.Named;
import icequill.work.Visit.PriceTerms;
import icequill.work.VisitLine;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Makes a visit from its file, in the shop's time zone and currency. */
public final class VisitReader {

    private static final String OWN = "text";
    private static final List<String> WHAT = List.of("material", "modifier", OWN);

    private final Fields fields;
    private final Shop shop;
    private final LocalMoments times;
    private final AttendanceReader attendances;

    public VisitReader(Fields fields, Shop shop) {
        this.fields = fields;
        this.shop = shop;
        this.times = new LocalMoments(shop.zone());
        this.attendances = new AttendanceReader(times);
    }

    /** Empty when no person's time could be read, which is then reported. */
    public Optional<Visit> read(String id) {
        List<Attendance> people = fields.children("people").stream().flatMap(entry -> attendances.read(entry).stream())
                .toList();
        List<Finding> findings = fields.children("machines").stream().flatMap(entry -> finding(entry).stream())
                .toList();
        List<VisitLine> lines = fields.children("lines").stream().flatMap(entry -> line(entry).stream()).toList();
        Optional<Call> call = fields.child("asked").flatMap(this::call);
        PurchaseOrder order = fields.child("order").map(this::order).orElse(PurchaseOrder.NONE);
        Optional<String> site = fields.id("site");
        Optional<Sale> sale = new SaleReader(fields, shop).read();
        if (people.isEmpty() == sale.isEmpty() || site.isEmpty()) {
            return Optional.empty();
        }
        if (sale.isPresent()) {
            return Optional.of(new Visit(id, site.get(), call, order, Outcome.CHARGED, List.of(), sale,
                    Optional.empty(), findings, lines, terms(), Optional.empty(), Visit.Handover.NONE,
                    fields.place("site")));
        }
        call.ifPresent(asked -> checkOrder(asked, people));
        return Optional.of(new Visit(id, site.get(), call, order, Outcomes.of(fields, "serviceCall"), people, sale,
                doneBy(people), findings, lines, terms(), fields.child("quote").flatMap(ProposalReader::read),
                handover(people), fields.place("site")));
    }

    private static ZonedDateTime began(List<Attendance> people) {
        return people.stream().map(Attendance::arrived).min(Comparator.naturalOrder()).orElseThrow();
    }

    private Optional<ZonedDateTime> doneBy(List<Attendance> people) {
        ZonedDateTime began = began(people);
        Optional<ZonedDateTime> doneBy = times.at(fields, "doneBy");
        doneBy.filter(moment -> !moment.isAfter(began)
                || Duration.between(began, moment).compareTo(AttendanceReader.LONGEST) > 0)
                .ifPresent(moment -> fields.problems().add(Code.WRONG_ORDER, fields.place("doneBy"),
                        "to be done by " + moment.toLocalDateTime() + ", but begins " + began.toLocalDateTime(),
                        "a time after the beginning, within 24 hours of it"));
        return doneBy;
    }

    private Visit.Handover handover(List<Attendance> people) {
        ZonedDateTime began = began(people);
        Optional<ZonedDateTime> safeFrom = times.at(fields, "safeFrom");
        safeFrom.filter(moment -> moment.isBefore(began)).ifPresent(moment -> fields.problems().add(Code.WRONG_ORDER,
                fields.place("safeFrom"), "safe from " + moment.toLocalDateTime() + ", before anybody had come",
                "a time after " + began.toLocalDateTime()));
        Optional<LocalDate> nextDue = fields.day("nextDue");
        nextDue.filter(day -> !day.isAfter(began.toLocalDate())).ifPresent(day -> fields.problems().add(
                Code.WRONG_ORDER, fields.place("nextDue"),
                "due again on " + day + ", but this visit was on " + began.toLocalDate(), "a later day"));
        return new Visit.Handover(safeFrom, nextDue);
    }

    private PriceTerms terms() {
        return new PriceTerms(named("flat"), names("fees"), names("surcharges"), named("classDiscount"),
                named("documentDiscount"),
                fields.children("less").stream().flatMap(entry -> OneOffReader.onClass(entry).stream()).toList(),
                named("route").map(round -> new Route(round.id(), Optional.empty(), round.place())),
                named("diagnosis").map(visit -> new Diagnosis(visit.id(), Optional.empty(), visit.place())),
                List.of());
    }

    private Optional<Named> named(String key) {
        return fields.text(key).map(name -> new Named(name, fields.place(key)));
    }

    private List<Named> names(String key) {
        return fields.leaves(key).stream().map(leaf -> new Named(leaf.text(), leaf.place())).toList();
    }

    private Optional<Call> call(Fields entry) {
        return times.at(entry, "at")
                .map(at -> new Call(entry.id("call"), entry.text("by").orElse(""), at, entry.text("symptom").orElse(""),
                        times.at(entry, "promised")));
    }

    private void checkOrder(Call call, List<Attendance> people) {
        Fields entry = fields.child("asked").orElseThrow();
        if (people.stream().noneMatch(person -> person.left().isAfter(call.at()))) {
            fields.problems().add(Code.WRONG_ORDER, entry.place("at"),
                    "asked at " + call.at().toLocalDateTime() + ", after everybody had left",
                    "a time before the visit");
        }
        call.promised().filter(promised -> promised.isBefore(call.at()))
                .ifPresent(promised -> fields.problems().add(Code.WRONG_ORDER, entry.place("promised"),
                        "promised for " + promised.toLocalDateTime() + ", but asked at " + call.at().toLocalDateTime(),
                        "a time after the call"));
    }

    private PurchaseOrder order(Fields entry) {
        return new PurchaseOrder(entry.text("purchaseOrder"),
                Prices.charged(entry, "limit", shop.currency()), entry.text("approver"),
                entry.place("limit"));
    }

    private Optional<Finding> finding(Fields entry) {
        return entry.text("machine").map(machine -> new Finding(machine, entry.text("complaint"), entry.text("cause"),
                entry.text("correction"), entry.constant("side", CallSide.class),
                entry.children("tasks").stream().flatMap(task -> task.text("task")
                        .map(id -> new Finding.TaskDone(id, Outcomes.of(task, "outcome"), task.place("task"))).stream())
                        .toList(),
                entry.children("readings").stream()
                        .map(reading -> new Finding.Reading(reading.text("what").orElse(""),
                                reading.text("unit").orElse(""), reading.text("before"), reading.text("after")))
                        .toList(),
                entry.children("recommended").stream()
                        .map(advice -> new Finding.Recommendation(advice.text("text").orElse(""),
                                advice.flag("accepted")))
                        .toList(),
                entry.children("settled").stream()
                        .map(earlier -> new Finding.Settled(earlier.text("visit").orElse(""),
                                earlier.text("recommended").orElse("")))
                        .toList(),
                entry.children("chemicals").stream().flatMap(used -> used.text("material")
                        .map(id -> new Finding.ChemicalUse(id, used.number("dose"), used.number("water"),
                                used.number("minutes"),
                                used.number("ph"), used.number("strip"), used.place("material")))
                        .stream()).toList(),
                entry.child("refrigerant").map(RefrigerantReader::read), entry.text("confirmed"),
                entry.place("machine")));
    }

    private Optional<VisitLine> line(Fields entry) {
        Optional<String> material = entry.text("material");
        Optional<String> modifier = entry.text("modifier");
        List<String> named = WHAT.stream().filter(entry.entries()::containsKey).toList();
        if (named.size() != 1) {
            entry.problems().add(Code.NOT_ALLOWED, entry.place(),
                    named.isEmpty()
                            ? "nothing says what the line is"
                            : "the line is said to be " + String.join(" and ", named),
                    "one of material, modifier, text on each line");
            return Optional.empty();
        }
        Optional<String> machine = entry.text("machine");
        Outcome outcome = Outcomes.of(entry, "outcome");
        if (named.contains(OWN)) {
            return new OwnLineReader(entry, shop.currency()).read(outcome);
        }
        OwnLineReader.KEYS.stream().filter(entry.entries()::containsKey)
                .forEach(key -> entry.problems().add(Code.NOT_ALLOWED, entry.place(key),
                        key + " belongs to a line in one's own words", "text: in place of the " + named.getFirst()));
        Optional<OneOff> less = new OneOffReader(entry, shop.currency()).read(outcome);
        if (material.isPresent()) {
            if (!entry.entries().containsKey("amount")) {
                entry.problems().add(Code.MISSING, entry.place(), "\"amount\" is missing", "how much was used");
            }
            return entry.number("amount")
                    .map(amount -> new VisitLine.MaterialUsed(material.get(), amount, machine, outcome, less,
                            entry.place("material")));
        }
        return modifier.map(id -> new VisitLine.ModifierApplied(id, entry.number("amount").orElse(BigDecimal.ONE),
                machine, outcome, less, entry.place("modifier")));
    }
}
