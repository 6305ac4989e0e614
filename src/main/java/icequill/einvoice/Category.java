package icequill.einvoice;

import icequill.money.Percent;
import java.util.Optional;

/**
 * How something is taxed.
 *
 * @param code of UNCL5305: S, Z, E or O
 * @param percent empty for O, which has no rate
 * @param scheme of UN list 5153: VAT, or the kind of sales tax
 * @param name of the tax, where the scheme alone does not say it
 */
record Category(String code, Optional<Percent> percent, String scheme, Optional<String> name) {

    static final String VAT = "VAT";

    static final Category OUTSIDE_SCOPE = new Category("O", Optional.empty(), VAT, Optional.empty());

    static Category vat(String code, Percent percent) {
        return new Category(code, Optional.of(percent), VAT, Optional.empty());
    }
}
