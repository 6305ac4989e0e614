package icequill.life.mail;

import java.time.LocalDateTime;

/** What a customer knows by a mail, as something that happens to what it is about. */
public sealed interface MailTells {

    /**
     * That an agreement renews itself.
     *
     * @param agreement its number
     */
    record OfRenewal(String agreement) implements MailTells {}

    /**
     * When somebody comes.
     *
     * @param visit by id
     * @param begins by the shop's clock, and {@code ends}
     */
    record OfVisit(String visit, LocalDateTime begins, LocalDateTime ends) implements MailTells {}
}
