package icequill.files.answer;

/** An answer that holds texts for the screen besides its data. */
public interface Sheet {

    /** What JSON shows of it, by the names of its components. */
    Object data();
}
