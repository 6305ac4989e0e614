package icequill.ledger.store;

import icequill.party.Address;
import java.util.regex.Pattern;
import org.jdbi.v3.core.result.RowView;
import org.jdbi.v3.core.statement.SqlStatement;

/** An address in the columns street (its lines), city, region, postal_code and country. */
public final class AddressColumns {

    /** The columns, in the order of {@link #VALUES}. */
    public static final String NAMES = "street, city, region, postal_code, country";
    public static final String VALUES = ":street, :city, :region, :postalCode, :country";
    public static final String SET = "street = :street, city = :city, region = :region, postal_code = :postalCode, country = :country";

    private static final Pattern LINE = Pattern.compile("\n");

    private AddressColumns() {
    }

    public static <S extends SqlStatement<S>> S bind(S statement, Address address) {
        return statement.bind("street", String.join("\n", address.street())).bind("city", address.city())
                .bind("region", address.region()).bind("postalCode", address.postalCode())
                .bind("country", address.country());
    }

    public static Address read(RowView row) {
        return new Address(LINE.splitAsStream(Column.text(row, "street")).toList(),
                Column.text(row, "city"), Column.text(row, "region"),
                Column.text(row, "postal_code"), Column.text(row, "country"));
    }
}
