package icequill.party;

import java.util.List;
import java.util.stream.Stream;

/**
 * A postal address.
 *
 * @param street one to three lines
 * @param region state or province code; may be empty
 * @param country ISO 3166-1 alpha-2
 */
public record Address(List<String> street, String city, String region, String postalCode, String country) {

    public Address {
        street = List.copyOf(street);
    }

    /** The lines below the name, in the order in which the country's post wants them (Universal Postal Union, from memory). */
    public List<String> lines() {
        boolean cityThenCode = switch (country) {
        case "US", "CA", "AU", "GB", "IE" -> true;
        default -> false;
        };
        String place = cityThenCode
                ? join(city + (region.isEmpty() ? "" : ", " + region), postalCode)
                : join(postalCode, city) + (region.isEmpty() ? "" : ", " + region);
        return Stream.concat(street.stream(), Stream.of(place)).toList();
    }

    private static String join(String first, String second) {
        return (first + " " + second).strip();
    }
}
