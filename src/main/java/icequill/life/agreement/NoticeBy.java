package icequill.life.agreement;

/** Who ends an agreement by notice. */
public enum NoticeBy {
    CUSTOMER, SHOP
}
