package icequill.einvoice;

import icequill.document.InvoiceLine;
import icequill.document.PricedPaper;
import icequill.explain.Phrase;
import icequill.money.Amounts;
import icequill.money.Percent;
import icequill.tax.TaxRate;
import icequill.tax.TaxTotal;
import icequill.tax.TaxTotal.ComponentTax;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import javax.money.CurrencyUnit;

/** Sales tax as it is: each authority's part of it by itself, and what is not taxed with the reason. */
record PlainSalesTax(PricedPaper bill, List<InvoiceLine> lines, Function<Phrase, String> wording) implements TaxScheme {

    /** State or provincial sales tax, local sales tax, and other, in UN list 5153. */
    private static final String STATE = "STT";
    private static final String LOCAL = "LOC";
    private static final String OTHER = "OTH";

    private static final Category UNTAXED = new Category("E", Optional.of(Percent.ZERO), STATE, Optional.empty());

    PlainSalesTax {
        lines = List.copyOf(lines);
    }

    @Override
    public List<Category> categories(InvoiceLine line) {
        return line.tax().rate().filter(rate -> rate.category().isTaxed())
                .map(rate -> rate.components().stream().map(this::category).toList()).orElse(List.of(UNTAXED));
    }

    @Override
    public Optional<Category> discounted(InvoiceLine line) {
        return Optional.empty();
    }

    @Override
    public List<Adjustment> charges() {
        return List.of();
    }

    @Override
    public List<TaxShare> shares() {
        List<TaxShare> shares = new ArrayList<>();
        bill.totals().taxes().stream().filter(this::isUsed)
                .forEach(total -> total.components().forEach(part -> shares.add(taxed(total, part))));
        Map<String, List<InvoiceLine>> untaxed = lines.stream().filter(line -> !line.tax().isTaxed())
                .collect(Collectors.groupingBy(line -> wording.apply(line.tax().why()), LinkedHashMap::new,
                        Collectors.toList()));
        untaxed.forEach((reason, members) -> shares.add(untaxed(reason, members)));
        return List.copyOf(shares);
    }

    @Override
    public boolean followsEn16931() {
        return false;
    }

    @Override
    public boolean namesVat() {
        return false;
    }

    private boolean isUsed(TaxTotal total) {
        return lines.stream().anyMatch(line -> line.tax().rate().equals(Optional.of(total.rate())));
    }

    private TaxShare taxed(TaxTotal total, ComponentTax part) {
        return new TaxShare(category(part.component()), part.base().orElse(total.base()), part.amount(),
                Optional.empty(),
                Optional.empty());
    }

    private TaxShare untaxed(String reason, List<InvoiceLine> members) {
        CurrencyUnit currency = bill.totals().net().getCurrency();
        return new TaxShare(UNTAXED, Amounts.sum(members.stream().map(line -> line.tax().base()).toList(), currency),
                Amounts.zero(currency), Optional.of(reason), Optional.empty());
    }

    private Category category(TaxRate.Component component) {
        String scheme = switch (component.levy()) {
        case STATE -> STATE;
        case LOCAL -> LOCAL;
        case NATION -> OTHER;
        };
        return new Category("S", Optional.of(component.percent()), scheme,
                Optional.of(component.name().in(bill.language())));
    }
}
