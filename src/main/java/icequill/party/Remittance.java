package icequill.party;

import java.util.List;
import java.util.Optional;

/**
 * Where money is to be sent.
 *
 * @param bank what the payer needs for a transfer, as name and value, for example "Routing" and its number
 * @param account the account by itself, an IBAN where there is one; for electronic invoices
 * @param contact whom payers ask for; empty for anybody
 * @param phone to ask at; empty for the shop's own
 */
public record Remittance(String payee, Address address, List<Detail> bank, Optional<String> account,
        Optional<String> contact, Optional<String> phone) {

    /** A name and its value, both printed as they are. */
    public record Detail(String name, String value) {}

    public Remittance {
        bank = List.copyOf(bank);
    }
}
