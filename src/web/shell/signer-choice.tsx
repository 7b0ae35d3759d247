import { SignAs } from '../parts/sign-as.tsx';
import styles from './find-box.module.css';

/** Whose name goes under what is written now. */
export const SignerChoice = () => (
  <div className={styles['signer']}>
    signing <SignAs />
  </div>
);
