package wainbook.isolation.register;

import java.util.List;
import uk.org.okapibarcode.backend.DataMatrix;
import wainbook.isolation.Register;

/**
 * What is stuck on a numbered thing: its number in large letters, and the same as a Data Matrix code for the scanner
 * (ISO/IEC 16022). Drawn as squares, so that it prints sharply at any size.
 */
public record Label(Register.Item item, String ownerName, int side, List<Square> squares) {

    /** One dark rectangle of the code, in modules. */
    public record Square(long x, long y, long width, long height) {}

    private static final int QUIET_ZONE = 2;

    static Label of(Register.Item item, String ownerName) {
        var code = new DataMatrix();
        code.setForceMode(DataMatrix.ForceMode.SQUARE);
        code.setContent(item.number());
        List<Square> squares = code.getRectangles().stream()
                .map(box -> new Square(
                        Math.round(box.x) + QUIET_ZONE,
                        Math.round(box.y) + QUIET_ZONE,
                        Math.round(box.width),
                        Math.round(box.height)))
                .toList();
        return new Label(item, ownerName, code.getWidth() + 2 * QUIET_ZONE, squares);
    }

    public String what() {
        return RegisterLook.what(item.sort());
    }
}
