package wainbook.works;

import java.util.Arrays;
import java.util.Optional;

/** What a person is in the works. The constants are for annotations; the word is what files and pages say. */
public enum Role {
    TECHNICIAN(Role.technician),
    TEAM_LEADER(Role.teamLeader),
    INSPECTOR(Role.inspector),
    LINE_MANAGER(Role.lineManager),
    WORKS_ENGINEER(Role.worksEngineer),
    QUALITY_ENGINEER(Role.qualityEngineer),
    HANDOVER_CLERK(Role.handoverClerk),
    AUDITOR(Role.auditor),
    ADMINISTRATOR(Role.administrator);

    public static final String technician = "technician";
    public static final String teamLeader = "team-leader";
    public static final String inspector = "inspector";
    public static final String lineManager = "line-manager";
    public static final String worksEngineer = "works-engineer";
    public static final String qualityEngineer = "quality-engineer";
    public static final String handoverClerk = "handover-clerk";
    public static final String auditor = "auditor";
    public static final String administrator = "administrator";

    private final String word;

    Role(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }

    public static Optional<Role> of(String word) {
        return Arrays.stream(values()).filter(role -> role.word.equals(word)).findFirst();
    }
}
