package icequill.mail;

import icequill.problem.Check;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import java.net.IDN;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Where mail goes or comes from: a mailbox of RFC 5321, section 4.1.2, at a domain that has a dot.
 *
 * @param local before the @, in ASCII, at most 64 characters; may be quoted
 * @param domain in the ASCII form of international names, small letters
 * @param name of whom it belongs to, for people; in one line
 */
public record MailAddress(String local, String domain, Optional<String> name) {

    private static final int MOST_LOCAL = 64;
    /** A path is at most 256 with its brackets (RFC 5321, section 4.5.3.1.3). */
    private static final int MOST = 254;
    private static final int MOST_NAME = 200;
    private static final String ATOM = "[A-Za-z0-9!#$%&'*+/=?^_`{|}~-]+";
    private static final Pattern LOCAL = Pattern
            .compile(ATOM + "(?:[.]" + ATOM + ")*|\"(?:[ !#-\\[\\]-~]|\\\\[ -~])*\"");
    private static final String LABEL = "[a-z0-9](?:[a-z0-9-]{0,61}[a-z0-9])?";
    private static final Pattern DOMAIN = Pattern.compile("(?:" + LABEL + "[.])+(?![0-9]+$)" + LABEL);
    /** Letters that IDNA of 2003 and of 2008 turn into different domains: sharp s, final sigma, and two joiners. */
    private static final Pattern TWO_WAYS = Pattern.compile("[\u00df\u1e9e\u03c2\u200c\u200d]");

    public MailAddress {
        Check.that(LOCAL.matcher(local).matches() && local.length() <= MOST_LOCAL, "not the local part of an address");
        Check.that(DOMAIN.matcher(domain).matches(), "not the domain of an address");
        Check.that(local.length() + 1 + domain.length() <= MOST, "an address that is too long");
        Check.that(name.filter(text -> !isName(text)).isEmpty(), "not a name in one line");
    }

    /** Reads an address without a name. Spaces around it are no part of it; a line break anywhere is a problem. */
    public static Validated<MailAddress> read(String text, Place place) {
        String address = text.replaceAll("^ +| +$", "");
        int at = address.lastIndexOf('@');
        if (!OneLine.is(address)) {
            return refused(place, "the mail address holds a line break or another control character",
                    "one line, such as office@example.com");
        }
        if (at < 1) {
            return refused(place, "this is no mail address", "a name, an @ and a domain, such as office@example.com");
        }
        String local = address.substring(0, at);
        if (!LOCAL.matcher(local).matches()) {
            return refused(place, "the part before the @ of a mail address is not one that every mail server takes",
                    "letters a to z, digits, and dots between them, such as office@example.com");
        }
        return domain(address.substring(at + 1), place).then(domain -> of(local, domain, place));
    }

    private static Validated<MailAddress> of(String local, String domain, Place place) {
        return local.length() > MOST_LOCAL || local.length() + 1 + domain.length() > MOST
                ? Validated.invalid(new Problem(Code.TOO_LARGE, place, "the mail address is too long",
                        "at most " + MOST_LOCAL + " characters before the @, and " + MOST + " in all"))
                : Validated.valid(new MailAddress(local, domain, Optional.empty()));
    }

    private static Validated<String> domain(String text, Place place) {
        if (TWO_WAYS.matcher(text).find()) {
            return refused(place, "the domain has a letter that not every program reads alike",
                    "its form in plain letters, as whoever registered it has it");
        }
        String domain;
        try {
            domain = IDN.toASCII(text, IDN.USE_STD3_ASCII_RULES).toLowerCase(Locale.ROOT);
        } catch (IllegalArgumentException none) {
            domain = "";
        }
        return DOMAIN.matcher(domain).matches()
                ? Validated.valid(domain)
                : refused(place, "what stands after the @ is no domain", "a domain with a dot, such as example.com");
    }

    /** The same address with the name of whom it belongs to. */
    public Validated<MailAddress> named(String owner, Place place) {
        return isName(owner)
                ? Validated.valid(new MailAddress(local, domain, Optional.of(owner)))
                : refused(place, "the name at a mail address is empty, too long, or holds a control character",
                        "one line of at most " + MOST_NAME + " characters");
    }

    private static boolean isName(String text) {
        return !text.isBlank() && text.length() <= MOST_NAME && OneLine.is(text);
    }

    private static <T> Validated<T> refused(Place place, String message, String allowed) {
        return Validated.invalid(new Problem(Code.NOT_ALLOWED, place, message, allowed));
    }

    /** The address alone, as servers are told it. */
    public String text() {
        return local + "@" + domain;
    }
}
