package icequill.render;

import icequill.RatesFixture;
import icequill.document.BrushingSheet;
import icequill.document.BrushingSheetPair;
import icequill.document.CombinedInvoice;
import icequill.document.CreditNote;
import icequill.document.Invoice;
import icequill.document.InvoiceLine;
import icequill.document.MachineReport;
import icequill.document.Outlook;
import icequill.document.Paper;
import icequill.document.RefrigerantRecord;
import icequill.document.RepairQuote;
import icequill.document.Schedule;
import icequill.document.StageInvoice;
import icequill.document.Totals;
import icequill.document.VisitAnnouncement;
import icequill.document.VisitRecord;
import icequill.document.Outlook;
import icequill.document.VisitSummary;
import icequill.document.Where;
import icequill.document.WorkSheet;
import icequill.explain.Explanation;
import icequill.explain.Fact;
import icequill.explain.Figure;
import icequill.explain.Phrase;
import icequill.life.refrigerant.Handled;
import icequill.life.refrigerant.RefrigerantLog;
import icequill.money.Amounts;
import icequill.money.Currencies;
import icequill.money.Percent;
import icequill.money.Rounding;
import icequill.papers.StageAssembly;
import icequill.party.AccessHours;
import icequill.party.Address;
import icequill.party.BillTo;
import icequill.party.Contact;
import icequill.party.Language;
import icequill.party.Machine;
import icequill.party.PaperSize;
import icequill.party.Remittance;
import icequill.party.SalesTaxEncoding;
import icequill.party.Shop;
import icequill.party.Sourcing;
import icequill.party.TaxBasis;
import icequill.party.Wording;
import icequill.pricer.UnitPrice;
import icequill.problem.Place;
import icequill.rates.RefrigerantRules;
import icequill.request.Extras;
import icequill.request.PaperOptions;
import icequill.tax.LineTax;
import icequill.tax.Stage;
import icequill.tax.StagedPrice;
import icequill.tax.TaxPlace;
import icequill.tax.TaxPlace.Rule;
import icequill.tax.TaxRate;
import icequill.tax.TaxTotal;
import icequill.tax.TaxTotals;
import icequill.tax.Taxability;
import icequill.tax.Taxable;
import icequill.work.Call;
import icequill.work.Caution;
import icequill.work.ChargeClass;
import icequill.work.Contradiction;
import icequill.work.Finding;
import icequill.work.MachineState;
import icequill.work.Outcome;
import icequill.work.Part;
import icequill.work.Procedure;
import icequill.work.PurchaseOrder;
import icequill.work.Quantity;
import icequill.work.Reading;
import icequill.work.RefrigerantWork.LeakTest;
import icequill.work.RefrigerantWork.Purpose;
import icequill.work.TechnicianCertificate;
import icequill.work.Unit;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/** Invoices for tests of looks, with amounts written down, not priced. */
public record InvoiceFixture(Language language, PaperSize size, CurrencyUnit currency, String country, String customer,
        int lines, Optional<String> logo, Optional<String> number) {

    public static InvoiceFixture of(Language language, PaperSize size, String currency, String country) {
        return new InvoiceFixture(language, size, Currencies.find(currency).orElseThrow(), country, "Quern & Tabb", 2,
                Optional.empty(), Optional.of("2026-0114"));
    }

    public InvoiceFixture withCustomer(String name) {
        return new InvoiceFixture(language, size, currency, country, name, lines, logo, number);
    }

    public InvoiceFixture withLines(int count) {
        return new InvoiceFixture(language, size, currency, country, customer, count, logo, number);
    }

    public InvoiceFixture withLogo(String file) {
        return new InvoiceFixture(language, size, currency, country, customer, lines, Optional.of(file), number);
    }

    public InvoiceFixture asDraft() {
        return new InvoiceFixture(language, size, currency, country, customer, lines, logo, Optional.empty());
    }

    public Invoice invoice() {
        ZoneId zone = ZoneId.of("America/New_York");
        Address address = new Address(List.of("12 Mill Lane"), "Alderton", "NY", "10999", country);
        Shop shop = new Shop("Frost & Daughters", address, "555-0100", "office@frost.example",
                List.of(new Remittance.Detail("Tax ID", "00-1")),
                Optional.of("DE123456789"),
                new Remittance("Frost & Daughters", address, List.of(new Remittance.Detail("Account", "0042")),
                        Optional.of("DE02120300000000202051"), Optional.of("Ana <payables>"), Optional.of("555-0177")),
                zone,
                currency, language, size, "#7a2e1d", logo, TaxBasis.INVOICE, Sourcing.MACHINE, Optional.empty(), 30,
                SalesTaxEncoding.PLAIN);
        ZonedDateTime arrived = ZonedDateTime.of(2026, 5, 13, 16, 20, 0, 0, zone);
        VisitSummary attended = new VisitSummary("V-7", "Mill Lane", Optional.of("0042"), address,
                Optional.of(new Call(Optional.empty(), "Noor", arrived.minusHours(3), "No <ice>.",
                        Optional.of(arrived.plusHours(1)))),
                new PurchaseOrder(Optional.of("PO-9"), Optional.of(amount("400")), Optional.of("Noor"), Place.NOWHERE),
                arrived,
                arrived.plusMinutes(105),
                List.of(new VisitSummary.Person("Ada", "lead", arrived, arrived.plusMinutes(105))), Optional.empty());
        Finding finding = new Finding("head", Optional.of("No ice."), Optional.of("Scale."), Optional.of("Freed."),
                List.of(), List.of(new Finding.Reading("freeze time", "min", Optional.of("31"), Optional.of("22"))),
                List.of(new Finding.Recommendation("New float.", false)), Place.NOWHERE);
        MachineReport report = new MachineReport(RatesFixture.site().machine("head").orElseThrow(), finding,
                List.of("brushed"));
        return new Invoice(number, LocalDate.of(2026, 5, 14), LocalDate.of(2026, 6, 13), shop,
                language,
                size, new BillTo(customer, Optional.of("Accounts"), address, Optional.empty(), Optional.empty()),
                Optional.of("V-30881"),
                attended, List.of(report), invoiceLines(), totals(),
                List.of(Phrase.of("remark.limit", new Fact.Amount(amount("400")))));
    }

    /** The whole invoice given back. */
    public CreditNote creditNote() {
        Invoice whole = invoice();
        return new CreditNote(number.map(of -> "C-" + of), LocalDate.of(2026, 6, 1),
                new CreditNote.Original("2026-0114", whole.date()), "Charged <twice>.", whole.shop(), language, size,
                whole.billTo(), whole.vendorNumber(), whole.served(), whole.lines(),
                IntStream.rangeClosed(1, whole.lines().size()).boxed().toList(), whole.totals(), List.of());
    }

    /** The same lines, offered. */
    public RepairQuote repairQuote() {
        Invoice like = invoice();
        List<Stage> stages = new StagedPrice(like.totals().net(), like.totals().taxes(),
                like.totals().taxPlace().advances()).deposit(Percent.of("25"));
        Stage deposit = stages.getFirst();
        return new RepairQuote(number.map(of -> "Q-" + of), LocalDate.of(2026, 6, 1), LocalDate.of(2026, 7, 1),
                like.shop(), language, size, like.billTo(), like.vendorNumber(), like.served(),
                RatesFixture.site().machine("head").orElseThrow(),
                Optional.of(new RepairQuote.Found(LocalDate.of(2026, 5, 13), Optional.of("No <ice>."),
                        Optional.of("Scale."), "New float.")),
                "Fit a new float & watch two cycles.", like.lines(), like.totals(),
                Optional.of(new RepairQuote.Deposit(deposit.share(), deposit.due(), deposit.how(),
                        stages.getLast().due())),
                Optional.of(new RepairQuote.InParts(stages)), List.of());
    }

    /** Every kind of paper that there is. */
    public List<Paper> papers() {
        PlanFixture plans = new PlanFixture(invoice(), lines);
        AccountFixture account = new AccountFixture(invoice(), lines);
        return List.of(invoice(), creditNote(), repairQuote(), visitRecord(), workSheet(),
                brushingSheet(),
                brushingPair(), plans.quote(), plans.agreement(), plans.installment(), plans.renewal(),
                plans.comparison(), plans.outlook(), plans.owners(), plans.fit(), account.statement(),
                account.reminder(), combined(), stage(), refrigerantRecord(), announcement());
    }

    /** The same work, of which a third is asked for first, and a tenth of that held back. */
    public StageInvoice stage() {
        RepairQuote quote = repairQuote(totals(), new StagedPrice(totals().net(), totals().taxes(),
                totals().taxPlace().advances()).progress(List.of(Percent.of("30"), Percent.of("70")),
                        Percent.of("10")));
        return new StageAssembly(quote, "Q-7", RatesFixture.site())
                .invoice(1, List.of(), new PaperOptions(number, quote.date(), Optional.of(language), Extras.NONE))
                .orElseThrow();
    }

    /** The same work at other sums, paid in parts. */
    public RepairQuote repairQuote(Totals sums, List<Stage> stages) {
        RepairQuote asked = repairQuote();
        return new RepairQuote(Optional.of("Q-7"), asked.date(), asked.validUntil(), asked.shop(),
                asked.language(), asked.size(), asked.billTo(), asked.vendorNumber(), asked.served(), asked.machine(),
                asked.found(), asked.work(), asked.lines(), sums, Optional.empty(),
                Optional.of(new RepairQuote.InParts(stages)), asked.remarks());
    }

    /** The same lines, of two visits: the last of them at another site, which has nothing but them. */
    public CombinedInvoice combined() {
        Invoice billed = invoice();
        VisitSummary first = billed.attended();
        VisitSummary second = new VisitSummary("second-visit", "Quay <2>", Optional.of("0043"),
                new Address(List.of("7 Quay"), first.address().city(), first.address().region(),
                        first.address().postalCode(), first.address().country()),
                Optional.empty(), first.order(), first.arrived().plusDays(2), first.left().plusDays(2), first.people(),
                Optional.empty());
        int half = billed.lines().size() / 2;
        return new CombinedInvoice(billed.number(), billed.date(), billed.due(), billed.shop(), billed.language(),
                billed.size(), billed.billTo(), billed.vendorNumber(),
                List.of(new CombinedInvoice.Part(first, billed.machines(), billed.lines().subList(0, half)),
                        new CombinedInvoice.Part(second, List.of(),
                                billed.lines().subList(half, billed.lines().size()))),
                billed.totals(), billed.remarks());
    }

    /** For as many machines as the invoice has lines, one of each kind that is left to a technician. */
    public BrushingSheet brushingSheet() {
        Invoice billed = invoice();
        Machine machine = billed.machines().getFirst().machine();
        BrushingSheet.Charge charge = new BrushingSheet.Charge(
                Phrase.of("line.material", new Wording("service call", "visita de servicio").named()), amount("52"),
                Explanation.of(Figure.price(amount("52"), "")));
        BrushingSheet.Sum visit = sum(Figure.price(amount("52"), ""));
        BrushingSheet.Sum own = sum(Figure.term(10, "min").times(Figure.price(amount("22"), "h"))
                .over(Figure.term(60, "min/h")).rounded(Rounding.LINE, currency));
        BrushingSheet.Sum difference = sum(Figure.price(amount("52"), "").minus(Figure.price(own.amount(), "")));
        return new BrushingSheet(billed.date(), billed.shop(), language, size, customer, "Mill Lane",
                Optional.of("0042"), billed.attended().address(), Collections.nCopies(lines, machine),
                Arrays.stream(BrushingSheet.Reason.values())
                        .map(reason -> new BrushingSheet.Left(machine, List.of(reason))).toList(),
                new BrushingSheet.Comparison(List.of(charge), visit, own, amount("8"), difference, own),
                Optional.of(new BrushingSheet.Savings(new BigDecimal("0.4"), amount("50"), amount("52"), amount("-50"),
                        Optional.of(new BrushingSheet.Electricity(amount("0"), amount("50"), amount("150"))),
                        List.of(new Outlook.Input(Phrase.of("brushing.in.not-booked", new Fact.Text("galley"),
                                new Fact.Measure(new BigDecimal(6), "month")),
                                Phrase.of("outlook.origin.book", Fact.number(14, "visit"),
                                        new Fact.Day(billed.date())))))),
                List.of(Caution.values()));
    }

    /** With the other language on the back. */
    public BrushingSheetPair brushingPair() {
        Language other = language.equals(Language.ENGLISH) ? Language.SPANISH : Language.ENGLISH;
        return new BrushingSheetPair(brushingSheet(),
                new InvoiceFixture(other, size, currency, country, customer, lines, logo, number).brushingSheet());
    }

    private BrushingSheet.Sum sum(Figure figure) {
        Explanation how = Explanation.of(figure);
        return new BrushingSheet.Sum(how.amount(currency), how);
    }

    /** As many steps as the invoice has lines, in every state, with everything that a step can say. */
    public WorkSheet workSheet() {
        Invoice billed = invoice();
        WorkSheet.Dose dose = new WorkSheet.Dose("descaler <mild>", Optional.of("00-1"),
                new Quantity(new BigDecimal("16"), Unit.FLUID_OUNCE),
                Optional.of(new WorkSheet.ByLabel(new Quantity(new BigDecimal("3"), Unit.GALLON),
                        new Quantity(new BigDecimal("18"), Unit.FLUID_OUNCE))));
        WorkSheet.Dose unlimited = new WorkSheet.Dose("soap", Optional.empty(),
                new Quantity(BigDecimal.ONE, Unit.OUNCE), Optional.empty());
        Procedure procedure = new Procedure(Optional.of(new Procedure.Timer(20, 25)), 3,
                List.of(Reading.values()));
        List<WorkSheet.Step> steps = new ArrayList<>();
        for (int i = 0; i < lines; i++) {
            steps.add(new WorkSheet.Step(WorkSheet.Kind.TASK, "brush the condenser", Part.CONDENSER,
                    MachineState.DE_ENERGIZED, 10, 0,
                    Optional.of(new WorkSheet.Turn(12 * i, 12 * i + 10, 12 * i + 10, List.of(i % 6))), List.of(),
                    Procedure.NONE, List.of(Caution.LOCK_OUT, Caution.NYLON_BRUSH_ONLY)));
        }
        steps.addFirst(new WorkSheet.Step(WorkSheet.Kind.SWITCH_OFF, "", Part.OTHER, MachineState.DE_ENERGIZED, 0, 0,
                Optional.empty(), List.of(), Procedure.NONE, List.of(Caution.BOTH_FEEDS)));
        steps.add(new WorkSheet.Step(WorkSheet.Kind.SWITCH_ON, "", Part.OTHER, MachineState.CIRCULATING, 0, 0,
                Optional.empty(), List.of(), Procedure.NONE, List.of(Caution.CLEAR_BEFORE_POWER)));
        int pour = 12 * lines;
        steps.add(new WorkSheet.Step(WorkSheet.Kind.TASK, "descale", Part.OTHER, MachineState.CIRCULATING, 3, 20,
                Optional.of(new WorkSheet.Turn(pour, pour + 3, pour + 23, List.of(1))), List.of(dose, unlimited),
                procedure, List.of(Caution.LABEL_FIRST)));
        steps.add(new WorkSheet.Step(WorkSheet.Kind.TASK, "change the filter", Part.WATER_FILTER,
                MachineState.MAKING_ICE, 4, 0,
                Optional.of(new WorkSheet.Turn(pour + 23, pour + 27, pour + 27, List.of(0, 1))), List.of(),
                Procedure.NONE, List.of()));
        Machine machine = billed.machines().getFirst().machine();
        ZonedDateTime begins = billed.attended().arrived();
        Schedule schedule = new Schedule(begins, pour + 27, pour + 20, 4,
                List.of("Ana <lead>", customer, "C", "D", "E", "F"),
                List.of(new Schedule.Alarm(begins.plusMinutes(pour + 23L),
                        Optional.of(begins.plusMinutes(pour + 25L)), machine, "descale",
                        Optional.of(new Schedule.Next("restart", begins.plusMinutes(pour + 24L), List.of(0, 1), 1)))),
                List.of(Phrase.of("remark.longer-than-day", Fact.number(615, "min"), Fact.number(600, "min"))));
        return new WorkSheet(billed.date(), billed.shop(), language, size, customer, billed.attended(),
                new WorkSheet.Access(Optional.of(new AccessHours(LocalTime.of(9, 0), LocalTime.of(15, 0))),
                        Optional.of("Alley"), Optional.of("By the stair"),
                        Optional.of(new Contact("Bo <Hart>", Optional.of("kitchen manager"),
                                Set.of(Contact.Purpose.VISITS), Optional.of("607-555-0151"), Optional.empty())),
                        Optional.of("607-555-0150")),
                Optional.of(new WorkSheet.Limit(amount("900"), Optional.of("Imre"))),
                List.of(new WorkSheet.Load("descaler <mild>", new Quantity(new BigDecimal("16"), Unit.FLUID_OUNCE))),
                Optional.of(schedule), List.of(new WorkSheet.Job(machine, Optional.of("Quarterly."), List.of(), steps),
                        new WorkSheet.Job(machine, Optional.of("No <ice>."),
                                List.of(new WorkSheet.Earlier(LocalDate.of(2026, 4, 2), "New <door> gasket.", false)),
                                List.of())),
                List.of(Caution.values()));
    }

    /** One machine that lost some of what it holds, as often as the invoice has lines. */
    public RefrigerantRecord refrigerantRecord() {
        Invoice billed = invoice();
        List<Handled> visits = Collections.nCopies(lines, handled(true));
        RefrigerantLog log = RefrigerantLog.of(visits, visits, RefrigerantRules.NONE);
        return new RefrigerantRecord(billed.date(), billed.shop(), language, size, customer,
                new Where("Quay <2>", Optional.of("0043"), billed.attended().address()), Optional.of(billed.date()),
                Optional.empty(),
                List.of(new RefrigerantRecord.OfMachine(billed.machines().getFirst().machine(), log.entries(),
                        log.machines().getFirst())),
                log.kinds());
    }

    /** The visit that the invoice bills, while it is to come. */
    public VisitAnnouncement announcement() {
        Invoice billed = invoice();
        Machine machine = billed.machines().getFirst().machine();
        return new VisitAnnouncement(billed.date(), billed.shop(), language, size, customer,
                new Where("Quay <2>", Optional.of("0043"), billed.attended().address()), "next <visit>",
                billed.attended().arrived().plusDays(30), billed.attended().left().plusDays(30),
                List.of("Ada <Quill>", "Teo"),
                Collections.nCopies(lines,
                        new VisitAnnouncement.OfMachine(machine, List.of("clean <it>", "change the filter"), true,
                                true)),
                Optional.of("No <ice>."), Optional.of("PO <7>"), Optional.of("A-7"),
                Optional.of(new AccessHours(LocalTime.of(7, 0), LocalTime.of(11, 0))),
                Optional.of(new Contact("Chef <B>", Optional.empty(), Set.of(Contact.Purpose.VISITS),
                        Optional.of("555-0199"), Optional.empty())));
    }

    private static Handled handled(boolean tested) {
        return new Handled("first-visit", LocalDate.of(2026, 5, 13), "quay", "head", "R-404A", new BigDecimal("38"),
                new BigDecimal("12.5"), Optional.of("V-17 <new>"), new BigDecimal("4"), Optional.of("R-3"),
                Purpose.SERVICE, Optional.of("Ada <Quill>"),
                List.of(new TechnicianCertificate("Ada <Quill>", TechnicianCertificate.Type.UNIVERSAL,
                        Optional.of("77"))),
                Optional.of("Flare <nut> of the drier"), Optional.of("Made anew"),
                Optional.of(new LeakTest(LeakTest.When.INITIAL, true, Optional.of("nitrogen <150 psi>")))
                        .filter(test -> tested));
    }

    /** The visit that the invoice bills, with chemicals as long as the invoice's lines. */
    public VisitRecord visitRecord() {
        Invoice billed = invoice();
        VisitRecord.Chemical cleaner = new VisitRecord.Chemical("descaler <mild>", Optional.empty(),
                Optional.of(new Quantity(new BigDecimal("16"), Unit.FLUID_OUNCE)), Optional.of(new BigDecimal("22")),
                Optional.of(new BigDecimal("7.1")), Optional.empty());
        VisitRecord.Chemical sanitizer = new VisitRecord.Chemical("sanitizer", Optional.of("00-1"), Optional.empty(),
                Optional.of(new BigDecimal("10")), Optional.empty(), Optional.of(new BigDecimal("200")));
        List<VisitRecord.Chemical> chemicals = new ArrayList<>(Collections.nCopies(lines, cleaner));
        chemicals.add(sanitizer);
        return new VisitRecord(billed.date(), billed.shop(), language, size, customer, billed.attended(),
                List.of(new VisitRecord.Machine(billed.machines().getFirst(), chemicals,
                        List.of(new VisitRecord.Used("water filter <new>", Quantity.of(1, Unit.EACH))),
                        Optional.of(handled(false)), remarks(),
                        Optional.of("Flushed <twice> more."))),
                Optional.of(billed.attended().left().plusHours(1)), Optional.of(LocalDate.of(2026, 8, 13)),
                List.of(Caution.GAS_SUSPECTED));
    }

    /** One of every kind. */
    private static List<Contradiction> remarks() {
        return Arrays.stream(Contradiction.Kind.values()).map(kind -> new Contradiction(kind,
                new Wording("descaler <mild>", "desincrustante <suave>"), new BigDecimal("5.5"), new BigDecimal("6.5"),
                Unit.FLUID_OUNCE)).toList();
    }

    private List<InvoiceLine> invoiceLines() {
        List<InvoiceLine> all = new ArrayList<>();
        for (int i = 1; i < lines; i++) {
            all.add(line(Outcome.CHARGED));
        }
        all.add(line(Outcome.WARRANTY));
        all.add(line(Outcome.DECLINED));
        return all;
    }

    private InvoiceLine line(Outcome outcome) {
        MonetaryAmount list = amount("1300");
        Figure figure = Figure.term(new BigDecimal("13"), "floz").times(Figure.price(amount("100"), "floz"))
                .rounded(Rounding.LINE, currency);
        boolean charged = outcome.isCharged();
        MonetaryAmount net = charged ? list : Amounts.zero(currency);
        return new InvoiceLine(ChargeClass.CHEMICALS, outcome,
                Phrase.of("line.material", new Wording("descaler", "desincrustante").named()), Optional.of("back room"),
                new Quantity(new BigDecimal("13"), Unit.FLUID_OUNCE),
                Optional.of(new UnitPrice(amount("100"), Unit.FLUID_OUNCE)), list, list.subtract(net), net,
                new Explanation(charged ? figure : figure.minus(figure), reasons(outcome)),
                new LineTax(net, Explanation.of(Figure.price(net, "")),
                        charged ? Optional.of(rate()) : Optional.empty(), charged
                                ? Phrase.of("tax.taxed", new Fact.Part(Percent.of("8")))
                                : Phrase.of("tax.seller-consumes", new Fact.Word("class.chemicals"))));
    }

    private static List<Phrase> reasons(Outcome outcome) {
        return outcome == Outcome.WARRANTY
                ? List.of(Phrase.of("reason.outcome.warranty", new Fact.Text("Quillmaker Ice")))
                : List.of(Phrase.of("reason.dose"));
    }

    private Totals totals() {
        MonetaryAmount net = amount(String.valueOf(1300L * (lines - 1)));
        TaxRate rate = rate();
        TaxTotal tax = TaxTotals
                .of(List.of(new Taxable(rate, net)), TaxBasis.INVOICE, currency).getFirst();
        Map<ChargeClass, Rule> rules = new EnumMap<>(ChargeClass.class);
        for (ChargeClass chargeClass : ChargeClass.values()) {
            rules.put(chargeClass, new Rule(Taxability.TAXABLE, rate));
        }
        TaxPlace place = new TaxPlace("alder", Wording.same("Alder"), TaxPlace.Regime.SALES_TAX, "NY", rules,
                Optional.empty(), Optional.empty(),
                Optional.empty(), Optional.empty(), Optional.empty(),
                Place.NOWHERE);
        return new Totals(net, Optional.empty(), net, place, List.of(tax), tax.tax(), net.add(tax.tax()));
    }

    private static TaxRate rate() {
        return new TaxRate("sales", TaxRate.Category.S,
                List.of(new TaxRate.Component(new Wording("state", "estado"), Percent.of("5"), TaxRate.Levy.STATE,
                        Optional.empty(), Optional.empty()),
                        new TaxRate.Component(new Wording("county", "condado"), Percent.of("3"), TaxRate.Levy.LOCAL,
                                Optional.empty(), Optional.empty())),
                Optional.empty());
    }

    private MonetaryAmount amount(String number) {
        return Amounts.of(new BigDecimal(number), currency);
    }
}
