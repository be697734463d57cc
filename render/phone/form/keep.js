// What was entered, kept on this phone between openings where the browser allows it.
// state: {by, unit, day, view, cards: {key: {values, note, skip}}, before: cards of a form that was emptied}
class Keeper {
  constructor (name) {
    this.name = name
    this.works = this.tried()
  }

  tried () {
    try {
      localStorage.setItem(this.name + ' tried', '1')
      localStorage.removeItem(this.name + ' tried')
      return true
    } catch (e) {
      return false
    }
  }

  load () {
    const empty = {by: '', unit: '', day: '', view: 'start', cards: {}}
    try {
      const kept = JSON.parse(localStorage.getItem(this.name))
      return kept && kept.cards && typeof kept.cards === 'object' ? Object.assign(empty, kept) : empty
    } catch (e) {
      return empty
    }
  }

  // save returns whether it is kept; a full store is as good as none.
  save (state) {
    try {
      localStorage.setItem(this.name, JSON.stringify(state))
      this.works = true
    } catch (e) {
      this.works = false
    }
    return this.works
  }
}
