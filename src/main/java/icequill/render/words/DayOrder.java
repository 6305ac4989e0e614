package icequill.render.words;

/** In which order a day and a month in figures are meant. */
public enum DayOrder {
    DAY_FIRST, MONTH_FIRST,
    /** The country has one habit and the language another, or they have none. */
    UNCLEAR
}
