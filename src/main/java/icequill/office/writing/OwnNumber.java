package icequill.office.writing;

import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.request.PaperOptions;
import icequill.shop.ShopBook;

/** Numbers that somebody gives a paper himself; a shop with a book leaves that to the book. */
public final class OwnNumber {

    private static final String NUMBER = "[A-Za-z0-9][A-Za-z0-9-]{0,29}";

    private OwnNumber() {
    }

    /** The options, or that they have a number, which not every kind of paper can have. */
    public static Validated<PaperOptions> unnumbered(PaperOptions options) {
        return options.number().isEmpty()
                ? Validated.valid(options)
                : Validated.invalid(new Problem(Code.NOT_ALLOWED, Place.NOWHERE, "this kind of paper has no number",
                        "leave out --number"));
    }

    /** The options, or that their number cannot be used: once there is a book, the book numbers. */
    public static Validated<PaperOptions> numbered(ShopBook book, PaperOptions options) {
        if (options.number().isPresent() && book.exists()) {
            return Validated.invalid(new Problem(Code.NOT_ALLOWED, Place.NOWHERE,
                    "this shop has a book, which gives the numbers",
                    "icequill visit FILE, then icequill issue VISIT; for quotes, icequill issue --quote FILE; for credit notes, icequill credit NUMBER"));
        }
        return options.number().filter(number -> !number.matches(NUMBER))
                .map(number -> Validated.<PaperOptions>invalid(new Problem(Code.NOT_ALLOWED, Place.NOWHERE,
                        "the number \"" + number + "\" cannot be used", "up to 30 letters, digits and hyphens")))
                .orElseGet(() -> Validated.valid(options));
    }
}
