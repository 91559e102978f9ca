package wainbook.process.joint;

/** How a tool says that a torque was reached: it shows a value, or it clicks at the value it was set to. */
public enum ToolSort {
    INDICATING,
    SETTING;

    private static final String SETTING_KIND = "torque-setting";

    /** By the kind of instrument that a joint names; what is not called a setting tool is asked for its reading. */
    public static ToolSort of(String kind) {
        return kind.equals(SETTING_KIND) ? SETTING : INDICATING;
    }
}
