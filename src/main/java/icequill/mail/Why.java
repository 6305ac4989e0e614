package icequill.mail;

/** Why a mail was not taken, for those who can do something about it. */
public enum Why {
    /** No connection: the network, the name, the port. */
    NOT_REACHED,
    /** It closed the connection or did not answer in time, before it could have the mail. */
    BROKEN_OFF,
    /** It said, with a code from 400 to 499, that it may take the mail later. */
    LATER,
    /** It said something that is no answer to what it was told. */
    STRANGE_ANSWER,
    /** It takes no mail from this address. */
    SENDER_REFUSED,
    /** It takes no mail for one of the recipients. */
    RECIPIENT_REFUSED,
    /** It does not take this mail: its size, its content. */
    MAIL_REFUSED,
    /** It takes no connection from here. */
    SERVER_REFUSES,
    /** It offers no encryption. */
    NO_STARTTLS,
    /** Nobody who is trusted vouches for it, or for another name than it was called by. */
    NOT_TRUSTED,
    /** No encryption could be agreed on. */
    NO_ENCRYPTION,
    /** A login is set, and it offers none that is safe. */
    NO_LOGIN_OFFERED,
    /** It does not know the user, or the password is wrong. */
    LOGIN_REFUSED,
    /** It wants a login, and none is set. */
    LOGIN_NEEDED,
    /** The end of the mail was sent, and no answer came. */
    ANSWER_LOST
}
