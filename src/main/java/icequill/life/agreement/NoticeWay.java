package icequill.life.agreement;

/** How a notice that ends an agreement was given. */
public enum NoticeWay {
    PERSONAL, CERTIFIED_MAIL, MAIL, EMAIL, TELEPHONE
}
