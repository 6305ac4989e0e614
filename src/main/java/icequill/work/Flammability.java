package icequill.work;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Whether a refrigerant burns: safety groups of ANSI/ASHRAE Standard 34 (from memory; the nameplate decides). */
public enum Flammability {
    /** Group A1, or B1: no flame spreads. */
    NONE,
    /** Group A2L: burns slowly. */
    LOWER,
    /** Group A2 or A3: propane and its like burn fast. */
    HIGHER,
    /** Not recorded, or a refrigerant that is not listed here: taken to burn. */
    UNKNOWN;

    private static final Set<String> HIGHER_ONES = Set.of("50", "152A", "170", "290", "432A", "433A", "433B", "433C",
            "441A",
            "443A", "600", "600A", "601", "601A", "1270");
    private static final Set<String> LOWER_ONES = Set.of("32", "143A", "444A", "444B", "445A", "446A", "447A", "447B",
            "451A", "451B", "452B", "454A", "454B", "454C", "455A", "457A", "459A", "459B", "516A", "1234YF", "1234ZE",
            "1234ZE(E)");
    private static final Set<String> NONE_ONES = Set.of("11", "12", "22", "114", "115", "123", "124", "125", "134A",
            "227EA",
            "236FA", "245FA", "401A", "401B", "402A", "402B", "403B", "404A", "407A", "407B", "407C", "407D", "407F",
            "407H",
            "408A", "409A", "409B", "410A", "413A", "414A", "414B", "416A", "417A", "417B", "422A", "422B", "422C",
            "422D",
            "424A", "426A", "427A", "428A", "434A", "437A", "438A", "442A", "448A", "449A", "449B", "450A", "452A",
            "453A",
            "466A", "471A", "500", "502", "507", "507A", "513A", "513B", "515A", "515B", "718", "744");

    /** Of a refrigerant as it stands on a nameplate, such as {@code R-290}, {@code R290} or {@code HC-290}. */
    public static Flammability of(Optional<String> refrigerant) {
        String number = number(refrigerant.orElse(""));
        if (HIGHER_ONES.contains(number)) {
            return HIGHER;
        }
        if (LOWER_ONES.contains(number)) {
            return LOWER;
        }
        return NONE_ONES.contains(number) ? NONE : UNKNOWN;
    }

    /** Its number by ANSI/ASHRAE Standard 34: {@code 404A} of {@code R-404a} or {@code HFC 404A}. */
    public static String number(String refrigerant) {
        return refrigerant.toUpperCase(Locale.ROOT).replaceAll("\\s", "")
                .replaceFirst("^(R|HC|HFC|HFO|HCFC|CFC)-?(?=\\d)", "");
    }

    /** Whether people must keep flames away; also where nobody knows. */
    public boolean mayBurn() {
        return this != NONE;
    }
}
