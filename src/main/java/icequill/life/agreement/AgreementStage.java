package icequill.life.agreement;

/** Where an agreement stands on a day. */
public enum AgreementStage {
    /** Nobody accepted it yet. */
    DRAFTED,
    /** Its first day is still to come. */
    TO_COME, IN_FORCE,
    /** It runs until the day that a notice, or a refusal, ends it. */
    NOTICE_GIVEN, ENDED_BY_TERM, ENDED_BY_NOTICE, ENDED_BY_REFUSAL,
    /** A new owner took over the rest of it. */
    ENDED_BY_TRANSFER,
    /** Its term is over, and it went on as another agreement. */
    RENEWED
}
