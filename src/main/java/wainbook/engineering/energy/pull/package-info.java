/** What a drive can pull: slopes, grip, torque, power. */
package wainbook.engineering.energy.pull;
