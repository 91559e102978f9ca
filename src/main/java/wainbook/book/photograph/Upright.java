package wainbook.book.photograph;

import java.awt.geom.AffineTransform;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;

/**
 * How a camera held a picture: the tag Orientation of Exif (JEITA CP-3451, 0x0112, from memory), 1 to 8. Pictures of telephones
 * lie on their side without it.
 */
final class Upright {

    private static final int AS_STORED = 1;
    private static final int JPEG = 0xFFD8;
    private static final int APP1 = 0xFFE1;
    private static final int START_OF_SCAN = 0xFFDA;
    private static final int EXIF = 0x45786966;
    private static final short LITTLE_ENDIAN = 0x4949;
    private static final int ORIENTATION = 0x0112;
    private static final int TAG_BYTES = 12;

    private Upright() {}

    /** 1 where nothing is said or it cannot be read. */
    static int of(byte[] picture) {
        try {
            int said = said(ByteBuffer.wrap(picture));
            return said >= AS_STORED && said <= 8 ? said : AS_STORED;
        } catch (IndexOutOfBoundsException | java.nio.BufferUnderflowException | IllegalArgumentException damaged) {
            return AS_STORED;
        }
    }

    private static int said(ByteBuffer bytes) {
        if (Short.toUnsignedInt(bytes.getShort()) != JPEG) {
            return AS_STORED;
        }
        while (true) {
            int marker = Short.toUnsignedInt(bytes.getShort());
            int start = bytes.position();
            int length = Short.toUnsignedInt(bytes.getShort());
            if (marker == START_OF_SCAN || marker < 0xFF00 || length < 2) {
                return AS_STORED;
            }
            if (marker == APP1 && bytes.getInt() == EXIF) {
                bytes.getShort();
                return inDirectory(bytes.slice());
            }
            bytes.position(start + length);
        }
    }

    private static int inDirectory(ByteBuffer tiff) {
        tiff.order(tiff.getShort(0) == LITTLE_ENDIAN ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
        int directory = tiff.getInt(4);
        int tags = Short.toUnsignedInt(tiff.getShort(directory));
        for (int i = 0; i < tags; i++) {
            int tag = directory + 2 + i * TAG_BYTES;
            if (Short.toUnsignedInt(tiff.getShort(tag)) == ORIENTATION) {
                return Short.toUnsignedInt(tiff.getShort(tag + 8));
            }
        }
        return AS_STORED;
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
