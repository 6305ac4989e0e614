package icequill.rates;

/**
 * What a diagnosis charged is taken off its repair.
 *
 * @param days from the diagnosis, up to which the repair must begin; from 0 on
 * @param serviceCall whether what coming out for it cost is taken off too
 */
public record DiagnosisCredit(int days, boolean serviceCall) {}
