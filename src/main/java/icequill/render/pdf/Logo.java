package icequill.render.pdf;

import icequill.party.Shop;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.render.page.Texts;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Optional;

/**
 * The shop's picture, sized to stand in the head of a paper, however large or narrow it is.
 *
 * @param data as a {@code data:} address
 * @param width with its unit, millimeters
 * @param height with its unit, millimeters
 */
public record Logo(String data, String width, String height) implements Texts {

    private static final int MOST_WIDE = 70;
    private static final int MOST_HIGH = 15;

    /** The picture; empty when the shop has none. */
    public static Validated<Optional<Logo>> of(Shop shop, Path folder) {
        return shop.logo().map(name -> read(name, folder).map(Optional::of))
                .orElseGet(() -> Validated.valid(Optional.empty()));
    }

    /** Why a file is no picture that papers can have; empty where it is one. */
    public static Optional<String> wrong(Path file) {
        try {
            Picture.of(file);
            return Optional.empty();
        } catch (IOException unreadable) {
            return Optional.of(why(unreadable));
        }
    }

    private static Validated<Logo> read(String name, Path folder) {
        try {
            Picture picture = Picture.of(folder.resolve(name));
            BufferedImage image = picture.image();
            int width = Math.min(MOST_WIDE, Math.max(1, MOST_HIGH * image.getWidth() / image.getHeight()));
            int height = Math.min(MOST_HIGH, Math.max(1, MOST_WIDE * image.getHeight() / image.getWidth()));
            return Validated.valid(new Logo(picture.data(), width + "mm", height + "mm"));
        } catch (IOException unreadable) {
            return Validated.invalid(new Problem(Code.NOT_ALLOWED, Place.ofFile("shop.yaml"),
                    "the logo " + name + " cannot be used: " + why(unreadable),
                    "a PNG or JPEG that lies in the shop folder"));
        }
    }

    private static String why(IOException unreadable) {
        return unreadable instanceof NoSuchFileException
                ? "there is no such file"
                : String.valueOf(unreadable.getMessage());
    }
}
