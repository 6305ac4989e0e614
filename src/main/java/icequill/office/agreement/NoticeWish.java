package icequill.office.agreement;

import icequill.life.agreement.NoticeBy;
import icequill.life.agreement.NoticeWay;
import java.time.LocalDate;
import java.util.Optional;

/**
 * The notice by which somebody ends an agreement.
 *
 * @param received on which day
 * @param lastDay of the agreement; empty for the first that may be
 * @param who gave it
 * @param words of it
 * @param seen how many steps of the agreement were known to whoever asks; empty where that does not matter
 * @param isTrial whether all is undone again, to see what it comes to
 */
public record NoticeWish(LocalDate received, Optional<LocalDate> lastDay, NoticeBy by, NoticeWay way,
        Optional<String> who, Optional<String> words, Optional<Integer> seen, boolean isTrial) {}
