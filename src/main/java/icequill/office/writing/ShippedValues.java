package icequill.office.writing;

import icequill.document.BrushingSheet;
import icequill.document.BrushingSheetPair;
import icequill.document.ComparisonSheet;
import icequill.document.FitSheet;
import icequill.document.MaintenanceQuote;
import icequill.document.OwnersOutlook;
import icequill.document.Paper;
import icequill.document.PricedPaper;
import icequill.document.RefrigerantRecord;
import icequill.document.Reminder;
import icequill.document.RenewalNotice;
import icequill.document.ServiceAgreement;
import icequill.document.Statement;
import icequill.document.VisitAnnouncement;
import icequill.document.VisitRecord;
import icequill.document.WorkSheet;
import icequill.files.yaml.ShippedMarks;
import icequill.problem.Problems;
import icequill.render.pdf.Html;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Finds on a paper what is still as it came with the program, so that it does not go out like that. */
final class ShippedValues {

    private static final Pattern NUMBER = Pattern.compile("[0-9]+[.][0-9]+");

    private ShippedValues() {
    }

    /** All such values on a paper that customers, inspectors or accountants get; drafts and our own sheets may have them. */
    static Problems problems(Path folder, Paper paper, Html html) {
        Problems problems = new Problems();
        List<ShippedMarks> values = goesOut(paper) ? ShippedMarks.of(folder) : List.of();
        if (!values.isEmpty()) {
            String text = text(html)
                    + (paper instanceof PricedPaper priced ? " " + priced.totals().taxPlace().id() : "");
            values.stream().filter(value -> value.printed().stream().anyMatch(part -> isOn(text, part)))
                    .map(ShippedMarks::problem).forEach(problems::add);
        }
        return problems;
    }

    private static boolean goesOut(Paper paper) {
        return switch (paper) {
        case PricedPaper priced -> !priced.isDraft();
        case MaintenanceQuote quote -> quote.number().isPresent();
        case VisitRecord record -> true;
        case RefrigerantRecord record -> true;
        case VisitAnnouncement visit -> true;
        case ServiceAgreement agreement -> true;
        case RenewalNotice notice -> true;
        case Statement statement -> true;
        case Reminder reminder -> true;
        case WorkSheet sheet -> false;
        case BrushingSheet sheet -> false;
        case BrushingSheetPair sheets -> false;
        case ComparisonSheet sheet -> false;
        case OwnersOutlook page -> false;
        case FitSheet sheet -> false;
        };
    }

    /** What a reader sees, in small letters. */
    private static String text(Html html) {
        return html.text().replaceAll("(?s)<style.*?</style>", "").replaceAll("<[^>]*>", " ").replace("&#39;", "'")
                .replace("&quot;", "\"").replace("&lt;", "<").replace("&gt;", ">").replace("&amp;", "&")
                .toLowerCase(Locale.ROOT);
    }

    private static boolean isOn(String text, String value) {
        return (NUMBER.matcher(value).matches() ? number(value) : words(value)).matcher(text).find();
    }

    /** A text as a whole, not as a part of longer words; lines may be broken within. */
    private static Pattern words(String value) {
        String words = Stream.of(value.toLowerCase(Locale.ROOT).strip().split("\\s+")).map(Pattern::quote)
                .collect(Collectors.joining("[\\s\u00a0]+"));
        return Pattern.compile("(?<![\\p{L}\\p{N}])" + words + "(?![\\p{L}\\p{N}])");
    }

    /** A number as any country writes it: with a point or a comma, and with or without something between thousands. */
    private static Pattern number(String value) {
        String whole = value.substring(0, value.indexOf('.')).replaceAll("(?<=[0-9])(?=([0-9]{3})+$)", "[., \u00a0]?");
        return Pattern.compile("(?<![0-9.,])" + whole + "[.,]" + value.substring(value.indexOf('.') + 1) + "(?![0-9])");
    }
}
