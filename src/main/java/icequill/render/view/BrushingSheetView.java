package icequill.render.view;

import icequill.document.BrushingSheet;
import icequill.document.BrushingSheet.Comparison;
import icequill.document.BrushingSheet.Left;
import icequill.document.BrushingSheet.Sum;
import icequill.document.BrushingSheetPair;
import icequill.explain.ConstantKey;
import icequill.money.Amounts;
import icequill.party.Machine;
import icequill.render.page.Page;
import icequill.render.page.Texts;
import icequill.render.words.MachineName;
import icequill.render.words.Sentences;
import java.util.List;
import java.util.stream.Collectors;
import javax.money.MonetaryAmount;

/** A brushing sheet as texts, ready for {@code brushing-sheet.ftlh}. */
public record BrushingSheetView(BrushingSheet sheet, Sentences sentences) {

    private static final int FEW = 2;
    /** So many logs stand on the front; with more machines one log is for all. */
    private static final int MOST_LOGS = 3;

    /**
     * What the sheet says.
     *
     * @param yours the machines that customers may brush
     * @param byPlace whether each place has a log of its own
     * @param left the machines that are left to us
     * @param rows what brushing costs
     * @param savings what it saves; may be empty
     * @param electricity may be empty
     * @param inputs when condensers were brushed last, and which calls there were, each with who says so
     */
    record Brushing(String currency, List<String> yours, List<String> places, boolean byPlace, List<LeftToUs> left,
            List<Row> rows, List<String> cautions, List<Row> savings, String electricity,
            List<OutlookView.Input> inputs)
            implements
            Texts {}

    record LeftToUs(String name, String why) implements Texts {}

    /**
     * An amount.
     *
     * @param how may be empty
     * @param sum whether it is one
     */
    record Row(String what, String how, String amount, boolean sum) implements Texts {}

    /** The sheet in each language. */
    record Sides(List<Page> sides) implements Texts {}

    public static Page of(BrushingSheet sheet) {
        String country = sheet.shop().address().country();
        return new BrushingSheetView(sheet, Sentences.of(sheet.language(), country)).page();
    }

    /** Both sides; what the page itself needs comes from the front. */
    public static Page of(BrushingSheetPair pair) {
        Page front = of(pair.front());
        return front.with(new Sides(List.of(front, of(pair.back()))));
    }

    private Page page() {
        List<Details.Row> facts = new Details(sentences)
                .add("brushing.date", sentences.formats().day(sheet.date())).add("fact.store", sheet.storeNumber())
                .rows();
        return Page.of(new LetterView(sheet, sentences.word("brushing.title"), sentences).letter(sheet.customer(),
                sheet.site(), sheet.address(), facts), brushing());
    }

    private Brushing brushing() {
        List<String> places = places();
        return new Brushing(sheet.comparison().brush().getCurrency().getCurrencyCode(),
                sheet.yours().stream().map(this::name).toList(), places,
                places.size() > 1 && places.size() <= MOST_LOGS, sheet.left().stream().map(this::left).toList(),
                rows(sheet.comparison()), sheet.cautions().stream().map(new CautionWords(sentences)::full).toList(),
                sheet.savings().map(this::savings).orElse(List.of()),
                sheet.savings().flatMap(BrushingSheet.Savings::electricity)
                        .map(range -> sentences.word("brushing.electricity", round(range.low()), round(range.high()),
                                round(range.middle())))
                        .orElse(""),
                sheet.savings().map(BrushingSheet.Savings::inputs).orElse(List.of()).stream()
                        .map(input -> OutlookView.Input.of(input, sentences)).toList());
    }

    private List<Row> savings(BrushingSheet.Savings savings) {
        String calls = sentences.formats().number(savings.calls(), 1);
        return List.of(row(sentences.word("brushing.spared", calls), "", savings.spared(), false),
                row(sentences.word("brushing.bought"), "", savings.bought(), false),
                row(sentences.word("brushing.year-less"), "", sheet.comparison().year().amount().negate(), false),
                new Row(sentences.word("brushing.kept"), "", round(savings.kept()), true));
    }

    private String round(MonetaryAmount amount) {
        return sentences.formats().number(Amounts.number(amount));
    }

    /** By the serial number too, where there are few; by the place alone, where there are many and each has its own. */
    private String name(Machine machine) {
        if (sheet.yours().size() > MOST_LOGS && places().size() == sheet.yours().size()) {
            return Sentences.capitalized(machine.where());
        }
        return sheet.yours().size() > FEW ? called(machine) : new MachineName(machine, sentences).text();
    }

    private List<String> places() {
        return sheet.yours().stream().map(Machine::where).distinct().toList();
    }

    private static String called(Machine machine) {
        return Sentences.capitalized(machine.where()) + " · " + machine.model();
    }

    private LeftToUs left(Left left) {
        return new LeftToUs(called(left.machine()),
                left.reasons().stream()
                        .map(reason -> sentences.word("brushing.reason." + ConstantKey.of(reason)))
                        .collect(Collectors.joining("; ")) + ".");
    }

    private List<Row> rows(Comparison comparison) {
        return List.of(row("brushing.visit", comparison.visit(), true), row("brushing.own", comparison.own(), false),
                row(sentences.word("brushing.brush"), "", comparison.brush(), false),
                row("brushing.difference", comparison.difference(), true),
                row("brushing.year", comparison.year(), true));
    }

    private Row row(String key, Sum sum, boolean isSum) {
        return row(sentences.word(key), sentences.how(sum.how(), sum.amount()), sum.amount(), isSum);
    }

    private Row row(String what, String how, MonetaryAmount amount, boolean isSum) {
        return new Row(what, how, sentences.formats().amount(amount), isSum);
    }
}
