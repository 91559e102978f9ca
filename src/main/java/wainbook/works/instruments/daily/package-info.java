/** Checks of torque tools on the works' own tester, before work. */
package wainbook.works.instruments.daily;
