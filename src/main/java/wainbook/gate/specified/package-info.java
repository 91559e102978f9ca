/** What a vehicle was specified and asked to be, as its gates compare it. */
package wainbook.gate.specified;
