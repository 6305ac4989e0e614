package icequill.office.care;

import icequill.answer.rates.WhatIf;
import icequill.answer.rates.WhatIf.Row;
import icequill.explain.ConstantKey;
import icequill.files.form.Form;
import icequill.files.pricing.RatesVersion;
import icequill.ledger.entries.VisitEntry;
import icequill.money.Amounts;
import icequill.pricer.PricedVisit;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.shop.BookForms;
import icequill.shop.ShopBook;
import icequill.shop.ShopFolder;
import icequill.shop.VisitLoader;
import icequill.visits.VisitContext;
import icequill.work.ChargeClass;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/** The office that tries rates on visits that were done. */
public final class WhatIfOffice {

    private final ShopBook book;
    private final ShopBook byFolder;

    private WhatIfOffice(ShopBook book, ShopBook byFolder) {
        this.book = book;
        this.byFolder = byFolder;
    }

    public static WhatIfOffice of(Path folder, Clock clock) {
        return new WhatIfOffice(ShopBook.of(folder, clock), ShopBook.byFolder(folder, clock));
    }

    public static WhatIfOffice of(ShopBook book) {
        return new WhatIfOffice(book, book.byItsFolder());
    }

    /** A visit by the rates of its day and by others. */
    private record Tried(VisitContext now, VisitContext then) {}

    /**
     * What the visits of a period come to by the rates of their days, and by those of one day.
     *
     * @param version of the rates that is tried, by its id or the beginning of it; empty for the folder's, in force or not
     * @param on the day whose prices are tried
     */
    public Validated<WhatIf> of(Optional<String> version, LocalDate on, AskedPeriod period) {
        return new DoneVisits(book).of(period).then(entries -> other(version)
                .then(other -> tried(entries, other, on)).map(all -> told(all, version, on)));
    }

    private Validated<ShopBook> other(Optional<String> version) {
        return version.isEmpty()
                ? Validated.valid(byFolder)
                : book.read(open -> RatesOffice.named(open, version)).map(RatesVersion::id).then(book::by)
                        .map(Optional::orElseThrow);
    }

    private Validated<List<Tried>> tried(List<VisitEntry> entries, ShopBook other, LocalDate on) {
        VisitLoader own = new VisitLoader(BookForms.shop(book));
        ShopFolder folder = BookForms.shop(other);
        Problems problems = new Problems();
        List<Tried> all = new ArrayList<>();
        for (VisitEntry entry : entries) {
            Form form = BookForms.form(entry);
            Optional<VisitContext> now = own.read(form, problems);
            Optional<VisitContext> then = new VisitLoader(folder).read(form, visit -> on, problems);
            now.flatMap(known -> then.map(tried -> new Tried(known, tried))).ifPresent(all::add);
        }
        problems.addAll(own.folder().problems());
        problems.addAll(folder.problems());
        return problems.or(() -> all);
    }

    private static WhatIf told(List<Tried> all, Optional<String> version, LocalDate on) {
        CurrencyUnit currency = all.getFirst().now().taxed().priced().currency();
        Map<String, List<Tried>> byCustomer = all.stream()
                .collect(Collectors.groupingBy(one -> one.now().site().customer().name()));
        List<Row> customers = byCustomer.entrySet().stream()
                .map(entry -> row(entry.getKey(), entry.getValue(), currency, PricedVisit::net))
                .sorted(Comparator.comparing(Row::difference, Comparator.reverseOrder()).thenComparing(Row::name))
                .toList();
        List<Row> classes = Arrays.stream(ChargeClass.values())
                .map(kind -> row(ConstantKey.of(kind), all, currency, priced -> of(priced, kind)))
                .filter(row -> !row.now().isZero() || !row.then().isZero()).toList();
        return new WhatIf(on, version, all.size(), customers, classes,
                row("all", all, currency, PricedVisit::net));
    }

    private static Row row(String name, List<Tried> all, CurrencyUnit currency,
            Function<PricedVisit, MonetaryAmount> part) {
        return new Row(name,
                Amounts.sum(all.stream().map(one -> part.apply(one.now().taxed().priced())).toList(), currency),
                Amounts.sum(all.stream().map(one -> part.apply(one.then().taxed().priced())).toList(), currency));
    }

    /** The nets of a class, less their shares of a discount on the whole. */
    private static MonetaryAmount of(PricedVisit priced, ChargeClass chargeClass) {
        return Amounts.sum(IntStream.range(0, priced.lines().size())
                .filter(i -> priced.lines().get(i).chargeClass() == chargeClass)
                .mapToObj(i -> priced.lines().get(i).net().subtract(priced.share(i))).toList(), priced.currency());
    }
}
