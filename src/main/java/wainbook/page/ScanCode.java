package wainbook.page;

import java.util.List;
import uk.org.okapibarcode.backend.DataMatrix;

/**
 * A text as a Data Matrix code for the scanner (ISO/IEC 16022). Drawn as squares, so that it prints sharply at any size.
 *
 * @param side in modules, with the quiet zone
 */
public record ScanCode(String text, int side, List<Square> squares) {

    /** One dark rectangle of the code, in modules. */
    public record Square(long x, long y, long width, long height) {}

    private static final int QUIET_ZONE = 2;

    public static ScanCode of(String text) {
        var code = new DataMatrix();
        code.setForceMode(DataMatrix.ForceMode.SQUARE);
        code.setContent(text);
        List<Square> squares = code.getRectangles().stream()
                .map(box -> new Square(
                        Math.round(box.x) + QUIET_ZONE,
                        Math.round(box.y) + QUIET_ZONE,
                        Math.round(box.width),
                        Math.round(box.height)))
                .toList();
        return new ScanCode(text, code.getWidth() + 2 * QUIET_ZONE, squares);
    }
}
