package icequill.mail;

import java.util.function.Supplier;

/**
 * Who sends, as the mail server knows him.
 *
 * @param password asked for at each connection; nothing keeps or shows what it gives
 */
public record Login(String user, Supplier<char[]> password) {

    @Override
    public String toString() {
        return user;
    }
}
