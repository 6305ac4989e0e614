package icequill.render;

import icequill.party.Shop;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import javax.imageio.ImageIO;

/** The shop's picture, sized to stand in the head of a paper, however large or narrow it is. */
final class Logo {

    private static final int MOST_WIDE = 70;
    private static final int MOST_HIGH = 18;

    private Logo() {
    }

    /** File name and size in millimeters; empty when the shop has no logo, or one that cannot be read as a picture. */
    static Map<String, Object> of(Shop shop, Path folder) {
        return shop.logo().flatMap(name -> read(folder.resolve(name)).map(image -> {
            int width = Math.min(MOST_WIDE, Math.max(1, MOST_HIGH * image.getWidth() / image.getHeight()));
            int height = Math.min(MOST_HIGH, Math.max(1, MOST_WIDE * image.getHeight() / image.getWidth()));
            return Map.<String, Object>of("file", name, "width", width + "mm", "height", height + "mm");
        })).orElse(Map.of());
    }

    private static Optional<BufferedImage> read(Path file) {
        try {
            return Optional.ofNullable(ImageIO.read(file.toFile()));
        } catch (IOException missing) {
            return Optional.empty();
        }
    }
}
