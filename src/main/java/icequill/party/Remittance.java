package icequill.party;

import java.util.List;

/**
 * Where money is to be sent.
 *
 * @param bank what the payer needs for a transfer, as name and value, for example "Routing" and its number
 */
public record Remittance(String payee, Address address, List<Detail> bank) {

    /** A name and its value, both printed as they are. */
    public record Detail(String name, String value) {}

    public Remittance {
        bank = List.copyOf(bank);
    }
}
