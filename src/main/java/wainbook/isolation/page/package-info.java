/** The pages of an isolation: its steps in their order, with what stands against each. */
package wainbook.isolation.page;
