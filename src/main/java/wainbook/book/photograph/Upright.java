package wainbook.book.photograph;

import com.drew.imaging.ImageMetadataReader;
import com.drew.imaging.ImageProcessingException;
import com.drew.metadata.exif.ExifIFD0Directory;
import java.awt.geom.AffineTransform;
import java.io.ByteArrayInputStream;
import java.io.IOException;

/**
 * How a camera held a picture: the tag Orientation of Exif (JEITA CP-3451), 1 to 8. Pictures of telephones
 * lie on their side without it.
 */
final class Upright {

    private static final int AS_STORED = 1;
    private static final int LAST = 8;

    private Upright() {}

    /** 1 where nothing is said or it cannot be read. */
    static int of(byte[] picture) {
        try {
            var said = ImageMetadataReader.readMetadata(new ByteArrayInputStream(picture))
                    .getFirstDirectoryOfType(ExifIFD0Directory.class);
            Integer orientation = said == null ? null : said.getInteger(ExifIFD0Directory.TAG_ORIENTATION);
            return orientation != null && orientation >= AS_STORED && orientation <= LAST ? orientation : AS_STORED;
        } catch (ImageProcessingException | IOException | RuntimeException damaged) {
            return AS_STORED;
        }
    }

    /** Whether width and height change places. */
    static boolean onItsSide(int orientation) {
        return orientation >= 5;
    }

    /** Turns and mirrors a stored picture of this size so that it stands as it was seen. */
    static AffineTransform turning(int orientation, double width, double height) {
        return switch (orientation) {
            case 2 -> new AffineTransform(-1, 0, 0, 1, width, 0);
            case 3 -> new AffineTransform(-1, 0, 0, -1, width, height);
            case 4 -> new AffineTransform(1, 0, 0, -1, 0, height);
            case 5 -> new AffineTransform(0, 1, 1, 0, 0, 0);
            case 6 -> new AffineTransform(0, 1, -1, 0, height, 0);
            case 7 -> new AffineTransform(0, -1, -1, 0, height, width);
            case 8 -> new AffineTransform(0, -1, 1, 0, 0, width);
            default -> new AffineTransform();
        };
    }
}
